/**
 * The one question of a record that is open first: danger, then a dose to sign, then the rest of the worklist as it
 * is ordered, then what comes due, then what has not been asked for long. "Nothing" names what was looked at.
 */
import type { Dose } from '#core/prescribing/dose.ts';
import { addDays, type Day, daysBetween } from '#core/time/day.ts';
import { rankOf } from '#core/worklist/due-items.ts';
import { type DueItem, dangers, type WorklistItemKind } from '#core/worklist/item.ts';

type Item = Pick<DueItem, 'key' | 'kind' | 'since' | 'joint' | 'decisionId' | 'facts'>;

type Kept = Pick<DueItem, 'kind' | 'joint' | 'showsFrom'> & {
  /** Last day of being snoozed; null = it was not. */
  readonly snoozedUntil: Day | null;
};

export interface OpenWanted {
  /** What waits today, as the worklist shows it. */
  readonly due: readonly Item[];
  /** Every item that is kept, those included that show only later. */
  readonly kept: readonly Kept[];
  /** Doses that wait for a signature. */
  readonly waiting: readonly Dose[];
  /** When the screening in force was asked, and its question on medicines; null = never. */
  readonly screening: { readonly medicinesAskedOn: Day | null } | null;
  readonly today: Day;
}

/** Reminders said ahead of their day; the others say nothing before it. */
const ahead = [
  'screening-due',
  'pressure-due',
  'retest-due',
  'baseline-due',
  'phase-due',
  'limit-ended',
  'review-day',
] as const satisfies readonly WorklistItemKind[];
export type ComingKind = (typeof ahead)[number];

/** Two visits ahead: a choice, no source. */
const aheadDays = 14;
/** As a resting blood pressure counts for four weeks: a choice, no source. */
const notAskedDays = 28;

export type OpenFact =
  | {
      readonly is: 'item';
      readonly key: string;
      readonly kind: WorklistItemKind;
      readonly joint: DueItem['joint'];
      readonly decisionId: string | null;
      readonly facts: DueItem['facts'];
      /** Doses to sign, where the item is about them. */
      readonly doses: readonly Dose[];
      /** Other items of the worklist. */
      readonly others: number;
    }
  | { readonly is: 'coming'; readonly kind: ComingKind; readonly joint: DueItem['joint']; readonly on: Day }
  | { readonly is: 'not-screened' }
  | { readonly is: 'not-asked'; readonly lastOn: Day | null }
  | { readonly is: 'nothing'; readonly until: Day; readonly medicinesAskedOn: Day };

const placeOf = ({ kind }: Item): number =>
  dangers.includes(kind) ? rankOf(kind) - 100 : kind === 'awaiting-signature' ? -1 : rankOf(kind);

const inOrder = ({ due }: OpenWanted): readonly Item[] =>
  due.toSorted((a, b) => placeOf(a) - placeOf(b) || a.since - b.since || (a.key < b.key ? -1 : 1));

/** Where nothing shows yet. */
const comingOf = ({ kept, today }: OpenWanted): Extract<OpenFact, { is: 'coming' }> | null => {
  const until = addDays(today, aheadDays);
  const soon = kept
    .flatMap(({ kind, joint, showsFrom, snoozedUntil }) => {
      const known = ahead.find((one) => one === kind);
      const isSnoozed = snoozedUntil !== null && snoozedUntil >= showsFrom;
      const on = isSnoozed ? addDays(snoozedUntil, 1) : showsFrom;
      return known && on <= until ? [{ kind: known, joint, on }] : [];
    })
    .toSorted((a, b) => (a.on === b.on ? rankOf(a.kind) - rankOf(b.kind) : a.on < b.on ? -1 : 1));
  return soon[0] ? { is: 'coming', ...soon[0] } : null;
};

export const openFact = (wanted: OpenWanted): OpenFact => {
  const { waiting, screening, today } = wanted;
  const [first, ...others] = inOrder(wanted);
  if (first) {
    const { key, kind, joint, decisionId, facts } = first;
    const doses = kind === 'awaiting-signature' ? waiting : [];
    return { is: 'item', key, kind, joint, decisionId, facts, doses, others: others.length };
  }
  const coming = comingOf(wanted);
  if (coming) return coming;
  if (screening === null) return { is: 'not-screened' };
  const lastOn = screening.medicinesAskedOn;
  if (lastOn === null || daysBetween(lastOn, today) > notAskedDays) return { is: 'not-asked', lastOn };
  return { is: 'nothing', until: addDays(today, aheadDays), medicinesAskedOn: lastOn };
};
