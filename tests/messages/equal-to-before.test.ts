/** The keyed sentences say to the letter what the core says in English and what was told for it in German. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DoseProposal } from '#core/decision/dose/proposal.ts';
import { changesBetween } from '#core/decision/dose/volume.ts';
import type { CareAround } from '#core/episode/care-eligibility.ts';
import { proposedWordings } from '#core/episode/consent-wording.ts';
import { suspensionOn, withdrawnLately } from '#core/episode/suspensions.ts';
import { joints } from '#core/exercises/joints.ts';
import { changesForPatient } from '#core/prescribing/changes-in-words.ts';
import { doseChangeForPatient } from '#core/prescribing/dose-change-for-patient.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { screeningItems } from '#core/screening/items.ts';
import { doseChangeText } from '#messages/dose-changes.ts';
import { everyLanguage, textOf } from '#messages/every-language.ts';
import { exerciseName } from '#messages/exercises.ts';
import { sentenceRows } from '#messages/sentence-rows.ts';
import type { Text } from '#messages/text.ts';
import { translate } from '#messages/translate.ts';
import { occlusion } from '#tests/core/decision/propose.ts';
import { anyDose } from '#tests/messages/german/any-dose.ts';
import { patientSentences } from '#tests/support/patient-sentences.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { sentenceFiles } from '#ui/language/bridge/sentences.ts';
import { readySentences } from '#ui/language/ready.ts';

const asBefore = (english: string): Text => ({ en: english, de: translateToGerman(english) });

const { en, de } = everyLanguage;

describe('as before', () => {
  it('decisions, what they mean for today, and reasons', () => {
    const areas = { decision: 'decisions', today: 'todays', rule: 'rules' } as const;
    for (const { key, text } of patientSentences) {
      const [, area = '', code = ''] = /^engine\.(decision|today|rule)\.(.+)$/.exec(key) ?? [];
      expect(textOf(areas[area as keyof typeof areas], code as never)).toEqual(asBefore(text));
    }
  });

  it('exercises that rest', () => {
    const withdrawn = {
      kind: 'occlusion-supervised',
      act: 'withdrawn',
      wordingVersion: 0,
      at: 0,
      by: 'u',
      reason: null,
    } as const;
    const inCare = { state: 'in-care', change: null, returned: null } as const;
    const around: CareAround = { episodeStatus: inCare, consents: [], events: [], screening: null };
    const surgery = {
      id: 'e',
      kind: 'surgery',
      day: '2026-03-01',
      joint: null,
      recordedAt: 0,
      remark: null,
      medicine: null,
    } as const;
    const holds = [
      { ...around, standing: { ...inCare, state: 'closed' as const } },
      { ...around, standing: { ...inCare, state: 'on-break' as const } },
      { ...around, standing: { ...inCare, returned: { on: '2026-03-01', from: 'hospital' as const } } },
      { ...around, events: [surgery] },
      around,
    ].map((care) => suspensionOn(care, occlusion)!);
    expect(holds.map(({ code }) => code)).toHaveLength(Object.keys(en.sentences.holds).length - 1);
    for (const { code, patientText } of holds) expect(textOf('holds', code)).toEqual(asBefore(patientText));
    expect(textOf('holds', 'taken-back')).toEqual(asBefore(withdrawnLately([withdrawn], 0)[0]!));
  });

  it('changes of a dose, whatever the doses', () => {
    const drawn = fc.record({
      from: anyDose,
      to: anyDose,
      isSame: fc.boolean(),
      kind: fc.constantFrom<DoseProposal['kind']>('same', 'step', 'ease-back', 'return', 'stop'),
      effect: fc.constantFrom<DoseProposal['effect']>('acts-at-once', 'awaits-signature', 'repeat'),
    });
    fc.assert(
      fc.property(drawn, ({ from, to, isSame, kind, effect }) => {
        const proposal = { kind, effect, changes: changesBetween(from, isSame ? from : to) };
        const text = doseChangeText(doseChangeForPatient(proposal, from.exerciseId));
        const said = changesForPatient(proposal as unknown as DoseProposal, exerciseName(from.exerciseId).en);
        expect(text).toEqual(asBefore(said));
      }),
      { seed: 20260131, numRuns: 1500 },
    );
  });

  it('questions about health and what can be ticked', () => {
    for (const { id, question, asks } of screeningItems) {
      expect(textOf('screening-questions', id)).toEqual(asBefore(question));
      for (const detail of asks.details ?? []) {
        expect(textOf('screening-details', `${id}.${detail.id}` as 'medicines.testosterone')).toEqual(
          asBefore(detail.label),
        );
      }
    }
  });

  it('consents and ready sentences', () => {
    for (const [kind, text] of Object.entries(proposedWordings)) {
      expect(textOf('consents', kind as 'export')).toEqual(asBefore(text));
    }
    for (const one of readySentences) {
      expect(textOf('ready', one.key as 'stay')).toEqual({ en: one.en, de: one.de });
    }
  });

  /** English and German of an area, slots without their forms. */
  const pairsOf = (area: string): readonly (readonly [string, string])[] => {
    const german = sentenceRows(de).filter((row) => row.area === area);
    const plain = (text: string) => text.replace(/\{([a-z-]+):[a-z-]+\}/g, '{$1}');
    return sentenceRows(en)
      .filter((row) => row.area === area)
      .map(({ text }, place) => [plain(text), plain(german[place]!.text)]);
  };

  it.each(['refusals', 'self-management'] as const)('%s, nothing more and nothing less', (area) => {
    const plain = (text: string) => text.replace(/\{[#=]/g, '{');
    const told = Object.entries(sentenceFiles[area])
      .filter(([english]) => !english.includes('{#day}'))
      .map(([english, german]) => [plain(english), plain(german)]);
    expect([...pairsOf(area)].sort()).toEqual(told.sort());
  });

  it('days and joints as they stand in the record', () => {
    for (let month = 1; month <= 12; month += 1) {
      const day = `2025-${String(month).padStart(2, '0')}-09`;
      const text = asBefore(dayInWords(day));
      expect({ en: translate('{day}', { day }, en), de: translate('{day}', { day }, de) }).toEqual(text);
    }
    for (const joint of joints) {
      const { en: english, de: german } = asBefore(jointInWords(joint));
      expect(translate('x {joint:label}', { joint }, en)).toBe(`x ${english}`);
      expect(translate('x {joint:label}', { joint }, de)).toBe(`x ${german}`);
    }
  });
});
