/** What the form of a dose and its result are shown from. */
import type { ReactNode } from 'react';
import type { ClinicMachine } from '#core/clinic/machine.ts';
import type { Method } from '#core/prescribing/methods.ts';
import type { Version } from '../answers.ts';
import type { Typed } from '../forms/typed.ts';
import type { Held } from './held.ts';
import type { LadderRow } from './ladder-rows.ts';
import type { TypedFor } from './typed-before/typed-before.ts';

export interface PrescribeFormProps {
  readonly patientId: string;
  readonly method: Method;
  readonly ladders: Readonly<Record<string, readonly LadderRow[]>>;
  readonly signer: string;
  /** Instant at which the page was read. */
  readonly readAt: number;
  /** The version in force a new one is written for; null for a new exercise. */
  readonly inForce: Pick<Version, 'itemId' | 'dose' | 'badDay' | 'cautions'> | null;
  readonly allInForce: readonly Pick<Version, 'itemId' | 'dose'>[];
  /** Where its figures come from, in words. */
  readonly about: readonly string[];
  /** What colleagues call the exercise it was opened with. */
  readonly trade: string;
  readonly start: Typed;
  /** What was typed before on this page and not signed or added, of whichever exercise. */
  readonly kept: Typed;
  readonly of: TypedFor;
  /** The figures in force, as they are typed; null where nothing is. */
  readonly now: Typed | null;
  readonly ownedKg: readonly number[];
  /** Of the clinic, retired ones among them. */
  readonly machines: readonly ClinicMachine[];
  readonly isMaximumKnown: boolean;
  readonly held: readonly Held[];
  /** Days the planned week gives it; null = no week was planned. */
  readonly plannedDays: number | null;
  /** Under the proposal. */
  readonly children: ReactNode;
}
