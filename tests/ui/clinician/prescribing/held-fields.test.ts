/** What is asked for a dose of a held exercise, and for one on putty. */
import { describe, expect, it } from 'vitest';
import { allAsked } from '#ui/clinician/prescribing/request-fields.ts';

const asked = (exerciseId: string, typed = {}) =>
  allAsked('variation', { exerciseId, ...typed }).map(({ name }) => name);
const labels = (exerciseId: string) =>
  allAsked('variation', { exerciseId }).map((field) => ('about' in field ? field.about : ''));

describe('the fields of a dose', () => {
  it('of a held exercise are its seconds and holds, and no tempo', () => {
    expect(asked('thumb-out-hold')).toEqual(expect.arrayContaining(['holdSeconds', 'mostHoldSeconds']));
    expect(asked('thumb-out-hold')).not.toContain('secondsPerRepetition');
    expect(labels('thumb-out-hold')).toEqual(
      expect.arrayContaining(['Fewest holds', 'Most holds', 'Holds in reserve']),
    );
  });

  it('of one that moves are as before, with a mark where something carries one', () => {
    expect(asked('putty-squeeze')).toContain('mark');
    expect(asked('putty-squeeze')).not.toContain('holdSeconds');
    expect(asked('sit-to-stand-chair')).not.toContain('mark');
    expect(labels('sit-to-stand-chair')).toContain('Fewest repetitions');
  });

  it('keep in sight what was typed for another exercise', () => {
    expect(asked('sit-to-stand-chair', { mark: '2', holdSeconds: '5' })).toEqual(
      expect.arrayContaining(['mark', 'holdSeconds']),
    );
  });
});
