/** What a proposal changes for the patient, as data. */
import { describe, expect, it } from 'vitest';
import type { DoseProposal } from '#core/decision/dose/proposal.ts';
import { doseChangeForPatient } from '#core/prescribing/dose-change-for-patient.ts';

const changes: DoseProposal['changes'] = [{ variable: 'load', from: 4, to: 2.5, unit: 'kg', percent: -37.5 }];
const proposal = { kind: 'ease-back', effect: 'acts-at-once', changes } as const;

describe('a change of a dose for the patient', () => {
  it('names what changes with the new and the old value, and no size in percent', () => {
    expect(doseChangeForPatient(proposal, 'bridge-one-leg')).toEqual({
      exerciseId: 'bridge-one-leg',
      kind: 'changed',
      changes: [{ variable: 'load', from: 4, to: 2.5 }],
    });
  });

  it.each([
    ['a stop, whatever else changes', { ...proposal, kind: 'stop' }, 'stop'],
    ['nothing that changes', { ...proposal, changes: [] }, 'same'],
    ['an increase nobody has signed', { ...proposal, effect: 'awaits-signature' }, 'awaits-signature'],
    ['nothing that changes, signed or not', { ...proposal, changes: [], effect: 'awaits-signature' }, 'same'],
  ] as const)('of %s tells no figure', (_name, one, kind) => {
    expect(doseChangeForPatient(one, 'bridge-one-leg')).toEqual({ exerciseId: 'bridge-one-leg', kind });
  });
});
