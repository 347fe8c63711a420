import { h, hydrate } from 'preact';
import type { Late } from '../../../machines/machine.ts';
import type { AnyFlow } from '../../case/any-flow.ts';
import type { Case } from '../../case/events.ts';
import type { Standing } from '../../case/standing.ts';
import { FlowPage } from './FlowPage.tsx';
import type { PageData } from './page-data.ts';
import type { Parts } from './use-parts.ts';

/*
 * The built page already shows the first question of its flow, and says which modules hold that flow and what it needs
 * later. So one script wakes any flow of its kind, and none carries a list of all.
 */

/** The modules that a page of one kind has besides its first. */
export interface Later {
  /** All of the flow. */
  whole<F>(): Promise<F>;
  /** What its causes show and how they are mended. */
  late(): Promise<Late>;
}

/** What differs between the pages of fault flows and those of rows. */
export interface Kind<First, F extends AnyFlow> {
  /** The flow as far as the first module has it. */
  opening(first: First): F;
  stand(flow: F, it: Case, late: Late | undefined): Standing;
  /** Fetches the screens of this kind. */
  parts(later: Later): Promise<Pick<Parts, 'fault' | 'plan'>>;
}

/** The one thing that a module exports. */
async function onlyExport<T>(address: string): Promise<T> {
  const [one, ...more] = Object.values((await import(/* @vite-ignore */ address)) as Record<string, T>);
  if (one === undefined || more.length > 0) throw new Error(`${address} must export one thing, got ${more.length + 1}`);
  return one;
}

export async function wake<First, F extends AnyFlow>(kind: Kind<First, F>): Promise<void> {
  const place = document.getElementById('flow');
  if (!place) return;
  const { root = '/', module = '', whole = '', late = '', page = '{}' } = place.dataset;
  const data = JSON.parse(page) as PageData;
  const later: Later = { whole: () => onlyExport(root + whole), late: () => onlyExport(root + late) };
  const load = async (): Promise<Parts> => {
    const [common, own] = await Promise.all([import('./parts.ts'), kind.parts(later)]);
    return { common, ...own };
  };
  const opening = kind.opening(await onlyExport<First>(root + module));
  // Whatever the page stands on is of its kind: the opening, or the whole that follows it.
  const stand = (flow: AnyFlow, it: Case, table: Late | undefined) => kind.stand(flow as F, it, table);
  hydrate(h(FlowPage, { ...data, opening, stand, root, load }), place);
}
