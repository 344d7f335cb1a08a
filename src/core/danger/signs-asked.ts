/**
 * In which form a patient was asked for warning signs, as it is stored with the answer. "list": every sign by
 * itself. "short": one question that names their families, in a wording a clinician of the clinic approved.
 * "statement": "No warning sign came on", among other statements after a session that began with the short form.
 */
import type { Field } from '../calculations/describe.ts';
import { type RedFlag, redFlagOfCuff, redFlags } from '../decision/facts/facts.ts';
import { addDays, type Day, daysBetween } from '../time/day.ts';

const signForms = ['list', 'short', 'statement'] as const;
export type SignForm = (typeof signForms)[number];
const signMoments = ['morning', 'before', 'now', 'during'] as const;
type SignMoment = (typeof signMoments)[number];

export interface SignsAsked {
  readonly moment: SignMoment;
  readonly form: SignForm;
  /** Wording of the short form; null where every sign was listed. */
  readonly wording: number | null;
}

/** What an entry says of it; absent in entries of earlier releases, which listed every sign. */
export const signFields = [
  {
    name: 'signsAsked',
    kind: 'list',
    optional: true,
    maxItems: signMoments.length,
    of: {
      name: 'asked',
      kind: 'record',
      fields: [
        { name: 'moment', kind: 'enum', values: signMoments },
        { name: 'form', kind: 'enum', values: signForms },
        { name: 'wording', kind: 'integer', unit: '1', min: 1, nullable: true },
      ],
    },
  },
  /** Ticked, and taken back when asked once more: no warning sign, and kept. */
  {
    name: 'signSlips',
    kind: 'list',
    optional: true,
    maxItems: redFlags.length,
    of: { name: 'flag', kind: 'enum', values: redFlags },
  },
] as const satisfies readonly Field[];

/** Number of the words of the short form; whatever changes in them, or in what they name, is a new one. */
export const shortWording = 1;

/** The families of the short form with the signs each names. Every sign stands in exactly one. */
export const signFamilies = {
  heart: ['chest-pain', 'breathlessness', 'fainting'],
  stroke: ['face-speech-or-one-sided-weakness'],
  head: ['severe-headache-or-vision'],
  nerves: ['saddle-or-bladder-change', 'new-weakness', 'neck-pain-with-limb-symptoms'],
  joint: ['hot-swollen-joint', 'locked-joint', 'cannot-bear-weight-or-deformity'],
  calf: ['calf-pain-swelling'],
  muscle: ['dark-urine'],
  fever: ['unexplained-fever'],
  fall: ['fall-with-injury'],
  cuff: ['persistent-limb-change-after-release'],
} as const satisfies Record<string, readonly RedFlag[]>;
export type SignFamily = keyof typeof signFamilies;

/** Asked only of people who have a cuff prescribed. */
export const familiesAsked = (hasCuff: boolean): readonly SignFamily[] =>
  (Object.keys(signFamilies) as SignFamily[]).filter((family) => hasCuff || family !== 'cuff');

/** Every sign by itself, in the order of the engine's classes; that of the cuff as above. */
export const signsListed = (hasCuff: boolean): readonly RedFlag[] =>
  redFlags.filter((flag) => hasCuff || flag !== redFlagOfCuff);

/** Clinic choice, no source: after so many days the whole list is asked again. */
export const wholeListDays = 7;

export interface ListNeeds {
  readonly day: Day;
  /** The wording a clinician of the clinic has approved, and not withdrawn. */
  readonly approvedWording: number | null;
  /** The clinic wants the whole list every time. */
  readonly isAlwaysWhole: boolean;
  readonly hadSession: boolean;
  /** Instant and day the whole list was last answered with "none of these". */
  readonly listAnswered: { readonly at: number; readonly day: Day } | null;
  /** Instants of the newest warning sign told, and of the newest change of method. */
  readonly signAt: number | null;
  readonly methodChangedAt: number | null;
}

/** Last day on which the short form may be asked; null = the whole list is asked. */
export const shortSignsUntil = (needs: ListNeeds): Day | null => {
  const { day, listAnswered, signAt, methodChangedAt } = needs;
  if (needs.approvedWording !== shortWording || needs.isAlwaysWhole || !needs.hadSession) return null;
  if (listAnswered === null || daysBetween(listAnswered.day, day) >= wholeListDays) return null;
  if (Math.max(signAt ?? 0, methodChangedAt ?? 0) >= listAnswered.at) return null;
  return addDays(listAnswered.day, wholeListDays - 1);
};

/** The short question may stand in place of the list on this day. */
export const asksShort = ({
  day,
  shortSignsUntil: until,
}: {
  readonly day: Day;
  readonly shortSignsUntil?: Day | null;
}): boolean => until != null && day <= until;
