/** Every reason a patient can be given for a decision, and for an exercise that rests, is told in German. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { explainToPatient } from '#core/decision/explain.ts';
import { factFields } from '#core/decision/facts/fact-fields.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import type { CareAround } from '#core/episode/care-eligibility.ts';
import { suspensionOn, withdrawnLately } from '#core/episode/suspensions.ts';
import { occlusion } from '#tests/core/decision/propose.ts';
import { inputArbitrary } from '#tests/support/descriptor-arbitrary.ts';
import { patientSentences } from '#tests/support/patient-sentences.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { reasonSentences } from '#ui/language/bridge/sentences/reasons.ts';
import { wrongWith } from './left-in-english.ts';

const consent = (kind: 'occlusion-supervised' | 'occlusion-unsupervised', act: 'given' | 'withdrawn') => ({
  kind,
  act,
  wordingVersion: 0,
  at: 0,
  by: 'u',
  reason: null,
});
const consented = [consent('occlusion-supervised', 'given'), consent('occlusion-unsupervised', 'given')];

const around = (over: Partial<CareAround>): CareAround => ({
  episodeStatus: { state: 'in-care', change: null, returned: null },
  consents: consented,
  events: [],
  screening: null,
  ...over,
});

const operated = {
  id: 'e',
  kind: 'surgery',
  day: '2026-03-01',
  joint: null,
  recordedAt: 0,
  remark: null,
  medicine: null,
} as const;

const holds = [
  around({ episodeStatus: { state: 'closed', change: null, returned: null } }),
  around({ episodeStatus: { state: 'on-break', change: null, returned: null } }),
  around({
    episodeStatus: { state: 'in-care', change: null, returned: { on: '2026-03-01', from: 'hospital' } },
  }),
  around({ events: [operated] }),
  around({ consents: [] }),
].map((care) => suspensionOn(care, occlusion));

const everyReason = [
  ...patientSentences.map(({ text }) => text),
  ...holds.map((suspension) => suspension?.patientText ?? ''),
  ...withdrawnLately([consent('occlusion-supervised', 'withdrawn')], 0),
];

describe('why something was decided', () => {
  it('every hold from outside the engine was asked for here', () => {
    expect(holds.map((suspension) => suspension?.code)).toEqual([
      'care-closed',
      'on-break',
      'returned',
      'after-event',
      'no-consent',
    ]);
  });

  it('is told in German for every rule, answer and hold, and nothing else stands in the file', () => {
    expect(everyReason.map((text) => wrongWith(text, translateToGerman(text))).filter(Boolean)).toEqual([]);
    expect(Object.keys(reasonSentences).sort()).toEqual([...new Set(everyReason)].sort());
  });

  it('leaves nothing in English for whatever facts', () => {
    const facts = inputArbitrary(factFields);
    fc.assert(
      fc.property(facts, (drawn) => {
        const told = explainToPatient(decide(drawn as unknown as Facts));
        for (const text of [told.decision, told.today, ...told.because])
          expect(wrongWith(text, translateToGerman(text))).toBeNull();
        expect(told.because.length).toBeLessThanOrEqual(3);
      }),
      { seed: 20260131, numRuns: 500 },
    );
  });

  it('says a pause, a sign and a rest as strictly as in English', () => {
    expect(translateToGerman('Stop your exercises until we have spoken with you.')).toBe(
      'Machen Sie keine Übungen mehr, bis wir mit Ihnen gesprochen haben.',
    );
    for (const [text, word] of Object.entries(reasonSentences)) {
      if (/speak with us today/.test(text)) expect(word).toMatch(/sprechen Sie heute mit uns/);
      if (/Rest it|Rest the joint|Rest this joint/.test(text)) expect(word).toMatch(/ruhen/);
      if (/stay where you are|Stay where you are/.test(text)) expect(word).toMatch(/beim jetzigen Plan/);
      if (/do a little less|Do a little less/.test(text)) expect(word).toMatch(/etwas weniger/);
    }
  });
});
