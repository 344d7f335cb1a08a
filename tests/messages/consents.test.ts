/** What the proposed words of a consent promise, and what they never do. */
import { describe, expect, it } from 'vitest';
import { everyLanguage } from '#messages/every-language.ts';

const { en, de } = everyLanguage;

describe('the proposed words of a consent', () => {
  it('say nowhere that somebody always watches, and name the hours for what is sent', () => {
    const { consents } = en.sentences;
    expect(consents['remote-monitoring']).toMatch(/during the hours shown here, and not at other times/);
    expect(consents['occlusion-unsupervised']).toMatch(/Nobody watches me/);
    expect(Object.values(consents).join(' ')).not.toMatch(/always|24 hours|\bsafe/i);
  });

  it('say the same in German', () => {
    const { consents } = de.sentences;
    expect(consents['remote-monitoring']).toMatch(
      /zu den hier genannten Zeiten an, was ich sende, und zu anderen Zeiten nicht/,
    );
    expect(consents['occlusion-unsupervised']).toMatch(/Niemand sieht mir zu/);
    expect(Object.values(consents).join(' ')).not.toMatch(/immer|24 Stunden|rund um die Uhr|sicher/i);
  });
});
