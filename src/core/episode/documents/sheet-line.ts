/** The sheet for the time after care as lines by their key, before anybody has said them in a language. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Baseline } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import type { MonitoringHours } from '../monitoring-hours.ts';

/** A line, or the title of a part. */
export type SheetLine =
  | {
      readonly key:
        | 'title'
        | 'exercises'
        | 'none-without-cuff'
        | 'cuff'
        | 'cuff-ended'
        | 'cuff-left-out'
        | 'cuff-after-care'
        | 'none-without-cuff-now'
        | 'cuff-ask-first'
        | 'everything-rests'
        | 'joint-rests'
        | 'easier-only'
        | 'exercises-now'
        | 'everything-rests-now'
        | 'joint-rests-now'
        | 'easier-only-now'
        | 'care-goes-on'
        | 'ring-first'
        | 'no-usual-values'
        | 'no-usual-pain'
        | 'values-too-high'
        | 'ask-whether-values-fit'
        | 'worse-morning'
        | 'who-is-there'
        | 'outside-hours'
        | 'nobody-reads'
        | 'clinician-first';
    }
  | { readonly key: 'exercise'; readonly exerciseId: string }
  | { readonly key: 'dose' | 'easier'; readonly dose: Dose }
  | { readonly key: 'weekly'; readonly count: number }
  | { readonly key: 'caution'; readonly caution: Caution }
  | { readonly key: 'flag'; readonly flag: RedFlag }
  | { readonly key: 'about' | 'signed' | 'set-by'; readonly name: string; readonly day: Day }
  | { readonly key: 'joint'; readonly joint: Joint }
  | { readonly key: 'usual-pain' | 'pain-limit'; readonly value: number }
  | { readonly key: 'usual-pain-span'; readonly value: number; readonly top: number }
  | { readonly key: 'usual-morning'; readonly minutes: number; readonly swelling: Baseline['usualSwelling'] }
  | {
      readonly key: 'telephone' | 'ask-how-to-read' | 'over-pain-limit' | 'speak-same-day' | 'ring-clinic';
      readonly phone: string;
    }
  | { readonly key: 'ring-emergency' | 'nobody-there'; readonly number: string }
  | { readonly key: 'care-ended' | 'followed-mornings'; readonly day: Day }
  | { readonly key: 'other-care'; readonly clinic: string }
  | { readonly key: 'hours'; readonly hours: MonitoringHours }
  | { readonly key: 'clinic'; readonly clinic: string; readonly phone: string; readonly number: string };

export interface SheetPart {
  readonly title: SheetLine;
  readonly lines: readonly SheetLine[];
  /** What no row of the record says: advice given in the clinic's name, for a clinician to read first. */
  readonly advice: readonly SheetLine[];
}

export interface SelfManagement {
  /** Name of the clinic that writes. */
  readonly from: string;
  readonly telephone: SheetLine;
  readonly about: SheetLine;
  readonly title: SheetLine;
  readonly parts: readonly SheetPart[];
}
