/** Changed doses in a record handed on as a file can be read without the program. */
import { describe, expect, it } from 'vitest';
import { doseChangeSentences } from '#exchange/json/dose-change-sentences.ts';
import { doseChangeText } from '#messages/dose-changes.ts';

describe('changed doses in a record handed on', () => {
  it('are said in every language, each once, by the change as it stands in the row', () => {
    const stop = { exerciseId: 'bridge-one-leg', kind: 'stop' } as const;
    const same = { exerciseId: 'bridge-two-legs', kind: 'same' } as const;
    const proposal = [stop, same, stop].map((changeForPatient) => ({ id: 'p', changeForPatient }));
    expect(doseChangeSentences({ proposal, message: [{ id: 'm' }] })).toEqual({
      [`dose-change ${JSON.stringify(stop)}`]: doseChangeText(stop),
      [`dose-change ${JSON.stringify(same)}`]: doseChangeText(same),
    });
  });

  it('are none where no dose was ever looked at again', () => {
    expect(doseChangeSentences({})).toEqual({});
  });
});
