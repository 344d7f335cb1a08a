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

  it('needs clearance where a finding that can be cleared stands beside what is not asked', () => {
    const reasons = [
      ...closed('no-consent-occlusion-supervised'),
      { code: 'high-blood-pressure', eligibility: 'closed-until-cleared' as const },
    ];
    expect(eligibilityStatus('closed', reasons).word).toBe('Needs clearance');
  });

  it('is called contraindicated where no reason is given', () => {
    expect(eligibilityStatus('closed', []).word).toBe('Contraindicated');
  });
});
