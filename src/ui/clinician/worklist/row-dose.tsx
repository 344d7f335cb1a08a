/** A waiting dose in words, whole, with what it changes and what is new of its cautions: before it is signed. */
import type { ReactNode } from 'react';
import { say } from '#messages/en/staff/worklist.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { WorklistLine } from '../answers.ts';
import { doseInWords } from '../dose-words.ts';
import { CautionList } from '../prescribing/caution-list.tsx';
import { namedOfStep, shortDose, stepInWords } from './dose-step.ts';

export interface RowDose {
  readonly prescriptionId: string;
  /** Old → new. */
  readonly step: string;
  readonly full: string;
  readonly easier: string;
  readonly short: string;
  /** Why it is opened before it is signed, beside new cautions; empty = nothing. */
  readonly named: readonly string[];
  /** Cautions that the dose in force has not; null = none. */
  readonly newCautions: ReactNode;
  /** Every caution of the dose, folded; null = the record shows them elsewhere. */
  readonly allCautions: ReactNode;
}

type WaitingDose = WorklistLine['doses'][number];

export const rowDose = (
  waiting: WaitingDose,
  cautions: WaitingDose['newCautions'] | null = null,
): RowDose => {
  const { prescriptionId, dose, badDay, before, beside, plannedDays, newCautions } = waiting;
  return {
    prescriptionId,
    step: stepInWords(before, dose),
    full: doseInWords(dose),
    easier: doseInWords(badDay),
    short: shortDose(dose),
    named: namedOfStep(before, dose, beside, plannedDays),
    newCautions:
      newCautions.length === 0 ? null : (
        <Disclosure summary={say('new-cautions', { count: newCautions.length })} isOpen>
          <CautionList cautions={newCautions} />
        </Disclosure>
      ),
    allCautions:
      cautions === null ? null : (
        <Disclosure summary={say('all-cautions', { count: cautions.length })}>
          <CautionList cautions={cautions} />
        </Disclosure>
      ),
  };
};
