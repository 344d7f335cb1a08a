/** What the core says to colleagues in English, as a language other than English has to say it. */
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import type { SideLine } from '#core/assessment/course/side-to-side.ts';
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import type { IneligibleMethod, OpenDanger } from '#core/episode/documents/handover.ts';
import type { Swelling, SwellingQuestion } from '#core/record/morning-questions.ts';
import type { Day } from '#core/time/day.ts';

export interface ColleaguePhrases {
  readonly day: (day: Day) => string;
  readonly figure: (value: number) => string;
  /** Of a thing measured, with the side or place it was measured at. */
  readonly title: (line: Pick<OutcomeLine, 'title' | 'kind'>) => string;
  readonly unit: (line: Pick<OutcomeLine, 'drawn'>) => string;
  readonly reading: (line: Pick<OutcomeLine, 'kind'>, text: string) => string;
  /** What may be said of a change, in full. */
  readonly change: (line: OutcomeLine) => string;
  /** One limb against the other: what may be said of the difference. */
  readonly sideDifference: (line: Pick<SideLine, 'sentence' | 'verdict'>) => string;
  readonly limit: (limit: LimitInForce) => string;
  /** Why a method is not open. */
  readonly reason: (line: Pick<IneligibleMethod, 'code' | 'from' | 'text'>) => string;
  readonly swelling: (swelling: Swelling, question: SwellingQuestion) => string;
  /** A class of medicine. */
  readonly medicine: (medicineClass: string) => string;
  /** What was ticked under an answer of the screening, by the item and the detail. */
  readonly detail: (item: string, detail: string) => string;
  /** What stands beside an answer: a note, a day, what was not said. */
  readonly remark: (remark: string) => string;
  /** A screening item or a kind of measurement, maybe with remarks behind it. */
  readonly term: (term: string) => string;
  /** What a rule found, with its figures. */
  readonly threshold: (threshold: string) => string;
  /** An urgent item. */
  readonly danger: (danger: OpenDanger) => string;
}
