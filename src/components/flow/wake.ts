import { h, hydrate } from 'preact';
import type { Late } from '../../../machines/kit.ts';
import type { AnyFlow } from '../../case/any-flow.ts';
import type { Case } from '../../case/events.ts';
import type { Standing } from '../../case/standing.ts';
import { FlowPage } from './FlowPage.tsx';
import type { PageData } from './page-data.ts';
import type { Parts } from './use-parts.ts';

/*
 * The built page already shows the first question of its flow, and says which modules hold the flow and what it needs
 * late. So one script wakes any flow of its kind, and none carries a list of all.
 */

/** What differs between the pages of fault flows and those of rows. */
export interface Kind<F extends AnyFlow> {
  stand(flow: F, it: Case, late: Late | undefined): Standing;
  /** Fetches the screens of this kind. */
  parts(late: () => Promise<Late>): Promise<Pick<Parts, 'fault' | 'plan'>>;
}

/** The one thing that a module exports. */
async function onlyExport<T>(address: string): Promise<T> {
  const [one, ...more] = Object.values((await import(/* @vite-ignore */ address)) as Record<string, T>);
  if (one === undefined || more.length > 0) throw new Error(`${address} must export one thing, got ${more.length + 1}`);
  return one;
}

const PICTURES = { profile: () => import('../plan/ProfileChart.tsx').then(({ ProfileChart }) => ProfileChart) };

export async function wake<F extends AnyFlow>(kind: Kind<F>): Promise<void> {
  const place = document.getElementById('flow');
  if (!place) return;
  const { root = '/', module = '', late: lateAt = '', page = '{}' } = place.dataset;
  const data = JSON.parse(page) as PageData;
  const flow = await onlyExport<F>(root + module);
  const load = async (): Promise<Parts> => {
    const [common, own, Picture] = await Promise.all([
      import('./parts.ts'),
      kind.parts(() => onlyExport<Late>(root + lateAt)),
      data.picture && PICTURES[data.picture](),
    ]);
    return { common, ...own, ...(Picture && { Picture }) };
  };
  const stand = (it: Case, late: Late | undefined) => kind.stand(flow, it, late);
  hydrate(h(FlowPage, { ...data, flow, stand, root, load }), place);
}
