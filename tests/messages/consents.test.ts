/** What the proposed words of a consent say, and what they never do. */
import { describe, expect, it } from 'vitest';
import { consentText } from '#messages/consents.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { everyRow } from '#messages/sentence-rows.ts';

const { en, de } = everyLanguage;

describe('the proposed words of a consent', () => {
  it('say nowhere that somebody always watches, and name the hours for what is sent', () => {
    const { consents } = en.sentences;
    expect(consents['remote-monitoring']).toMatch(
      /during the hours shown here\. Nobody reads it outside these hours/,
    );
    expect(consents['occlusion-unsupervised']).toMatch(/nobody watches me/);
    expect(Object.values(consents).join(' ')).not.toMatch(/always|24 hours|\bsafe/i);
  });

  it('say the same in German', () => {
    const { consents } = de.sentences;
    expect(consents['remote-monitoring']).toMatch(
      /zu den hier genannten Zeiten, was ich sende\. Außerhalb dieser Zeiten liest es niemand/,
    );
    expect(consents['occlusion-unsupervised']).toMatch(/niemand sieht mir zu/);
    expect(Object.values(consents).join(' ')).not.toMatch(/immer|24 Stunden|rund um die Uhr|sicher/i);
  });
});

describe('consent to the cuff', () => {
  const text = consentText('occlusion-supervised', null);

  // Patterson and Brandner, Journal of Sports Sciences, doi 10.1080/02640414.2017.1284341: 250 answers;
  // numbness 18.5 %, fainting or dizziness 14.6 %, bruising 13.1 %.
  it.each([
    ['numbness', 18.5, 5, /about 1 in 5 people had numbness/, /1 von 5 Personen ein Taubheitsgefühl/],
    ['fainting or dizziness', 14.6, 7, /bout 1 in 7 felt faint or dizzy/, /1 von 7 fühlte sich schwindlig/],
    ['bruising', 13.1, 8, /about 1 in 8 had a bruise/, /1 von 8 hatte einen blauen Fleck/],
  ])('names the reported share of %s among 250 answers', (_effect, percent, oneIn, english, german) => {
    expect(Math.round(100 / percent)).toBe(oneIn);
    expect(text.en).toMatch(/one survey with 250 answers/);
    expect(text.de).toMatch(/einer Umfrage mit 250 Antworten/);
    expect(text.en).toMatch(english);
    expect(text.de).toMatch(german);
  });

  // Clots 0.055 %, pulmonary embolism and rhabdomyolysis 0.008 % (national survey 2006, restated). Pooled
  // trials in knee osteoarthritis: no difference from ordinary training (Grantham 2021; He 2025).
  it('names rare harm, the choice without a cuff, and what was not shown in arthritis', () => {
    expect(text.en).toMatch(/Blood clots and muscle damage have happened\. They were rare\./);
    expect(text.en).toMatch(/Lighter weights without a cuff are another choice/);
    expect(text.en).toMatch(
      /In arthritis, the cuff has not been shown to work better than ordinary training/,
    );
    expect(text.de).toMatch(/Blutgerinnsel und Muskelschäden sind vorgekommen\. Sie waren selten\./);
    expect(text.de).toMatch(/Leichtere Gewichte ohne Manschette sind eine andere Möglichkeit/);
    expect(text.de).toMatch(/nicht gezeigt, dass die Manschette mehr bringt als gewöhnliches Training/);
  });
});

describe('numbness under a cuff and after it', () => {
  const about = (tag: 'en' | 'de', keys: readonly string[]) =>
    everyRow(everyLanguage[tag])
      .filter(({ key }) => keys.includes(key))
      .map(({ text }) => text);
  const keys = [
    'occlusion-unsupervised',
    'occlusion-release',
    'occlusion-after',
    'cuff.wait-ring',
    'flag.persistent-limb-change-after-release',
  ];

  it('has one wording in the consent, the cautions, the cuff page and the warning sign, in each language', () => {
    const english = about('en', keys);
    const german = about('de', keys);
    expect(english).toHaveLength(keys.length);
    expect(german).toHaveLength(keys.length);
    for (const sentence of english) expect(sentence).toMatch(/numbness or pins and needles/);
    for (const sentence of german) expect(sentence).toMatch(/Taubheit oder Kribbeln/);
  });

  it('is the same minute in the consent and in the caution', () => {
    const minute = ['occlusion-unsupervised', 'occlusion-release'];
    for (const sentence of about('en', minute)) expect(sentence).toMatch(/do not ease within a minute/);
    for (const sentence of about('de', minute)) expect(sentence).toMatch(/nicht innerhalb einer Minute nach/);
  });
});
