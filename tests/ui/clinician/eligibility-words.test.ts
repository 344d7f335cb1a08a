import { describe, expect, it } from 'vitest';
import { eligibilityStatus } from '#ui/clinician/words.ts';

const closed = (...codes: readonly string[]) =>
  codes.map((code) => ({ code, eligibility: 'closed' as const }));

describe('a method that is closed', () => {
  it.each([
    ['Assessment needed', ['not-asked-clots']],
    ['Assessment needed', ['never-screened', 'no-consent-occlusion-supervised']],
    ['Assessment needed', ['after-surgery']],
    ['Consent needed', ['no-consent-occlusion-supervised']],
    ['Not available now', ['on-break']],
    ['Contraindicated', ['arterial-disease']],
    ['Contraindicated', ['not-asked-clots', 'arterial-disease']],
  ])('is called %s for %s', (word, codes) => {
    expect(eligibilityStatus('closed', closed(...codes)).word).toBe(word);
  });

  it('is called contraindicated where no reason is given', () => {
    expect(eligibilityStatus('closed', []).word).toBe('Contraindicated');
  });
});
