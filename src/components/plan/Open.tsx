import { upperFirst } from '../../compute/first-letter.ts';
import type { Conditional, Finding } from '../../plan/verdict.ts';
import { minutesInWords } from '../flow/minutes.ts';
import { withUnit } from '../flow/with-unit.ts';

/** What an answer hangs on: said with it, before anything is done. */
export function Unless({ unless }: { readonly unless: readonly Conditional[] | undefined }) {
  if (!unless?.length) return null;
  return (
    <ul class="unless">
      {unless.map(({ when, follows }) => (
        <li key={when}>
          <b>Unless it reads “{when}”:</b> {withUnit(follows)}.
        </li>
      ))}
    </ul>
  );
}

interface FollowsProps {
  readonly findings: readonly Finding[] | undefined;
  readonly holds: readonly string[] | undefined;
}

/** Where the answer is open: what holds either way, and what follows from each finding. */
export function WhatFollows({ findings, holds }: FollowsProps) {
  if (!findings?.length) return null;
  return (
    <section>
      <h2>What would follow</h2>
      <ul class="follows">
        {findings.map(({ when, follows, who, minutes }) => (
          <li key={when}>
            <b>{upperFirst(when)}:</b> {withUnit(follows)}.{' '}
            <span class="hint">
              {minutes === 0 ? 'Nobody has to do anything.' : `By ${who}, ${minutesInWords(minutes)}.`}
            </span>
          </li>
        ))}
      </ul>
      {holds && holds.length > 0 && (
        <>
          <h3>Sure already</h3>
          <ul>
            {holds.map((line) => (
              <li key={line}>{withUnit(line)}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
