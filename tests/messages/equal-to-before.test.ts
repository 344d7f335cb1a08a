/** The keyed sentences say to the letter what the core says in English and what was told for it in German. */
import { describe, expect, it } from 'vitest';
import { limitCautions } from '#core/episode/limit-bounds.ts';
import { exercises } from '#core/exercises/catalogue.ts';
import { exerciseCautions } from '#core/exercises/cautions.ts';
import { joints } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import { screeningWords } from '#core/prescribing/cautions/from-screening.ts';
import { type PlainCautionId, uncheckedThings } from '#core/prescribing/cautions/ids.ts';
import type { LimitedBy, PatientCaution } from '#core/prescribing/cautions/patient-caution.ts';
import { occlusionChecks } from '#core/prescribing/occlusion/checks.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { cautionText } from '#messages/cautions.ts';
import { everyLanguage, textOf } from '#messages/every-language.ts';
import { exerciseName, exerciseSteps } from '#messages/exercises.ts';
import { sentenceRows } from '#messages/sentence-rows.ts';
import type { Text } from '#messages/text.ts';
import { translate } from '#messages/translate.ts';
import { allYes, cautions, doses } from '#tests/core/prescribing/cautions/doses.ts';
import { screeningWith } from '#tests/core/screening/answers.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { sentenceFiles } from '#ui/language/bridge/sentences.ts';
import { readySentences } from '#ui/language/ready.ts';

const asBefore = (english: string): Text => ({ en: english, de: translateToGerman(english) });

const { en, de } = everyLanguage;

describe('as before', () => {
  it('exercises, names and steps', () => {
    for (const { id, title, instructions } of exercises) {
      expect(exerciseName(id)).toEqual(asBefore(title));
      expect(exerciseSteps(id)).toEqual(instructions.map(asBefore));
    }
  });

  const thingOf = new Map(uncheckedThings.map((thing) => [textOf('unchecked', thing).en, thing]));

  const keyed = ({ id, patientText }: Caution): PatientCaution =>
    id === 'not-checked'
      ? {
          key: id,
          things: patientText
            .replace(/^Nobody has checked: |\. If you .*$/g, '')
            .split('; ')
            .map((thing) => thingOf.get(thing)!),
        }
      : { key: id as PlainCautionId };

  it('cautions, whatever brings them', () => {
    const screenings = [
      screeningWith(allYes),
      screeningWith(allYes.map((one) => ({ ...one, answer: 'not-known' as const }))),
      null,
    ];
    const made = doses.flatMap((dose) =>
      screenings.flatMap((screening) => cautions({ dose, screening, joints, exerciseCautions })),
    );
    for (const caution of made) expect(cautionText(keyed(caution))).toEqual(asBefore(caution.patientText));
    for (const [item, { patientText }] of Object.entries(screeningWords)) {
      expect(cautionText({ key: `screening-${item}` as PlainCautionId })).toEqual(asBefore(patientText));
    }
    const keys = new Set(made.map(({ id }) => id));
    const unsaid = Object.keys(en.sentences.cautions).filter(
      (key) => !keys.has(key) && !key.startsWith('screening-'),
    );
    expect(unsaid).toEqual([]);
  });

  it('limits, for every joint and kind', () => {
    const kinds: readonly LimitedBy[] = ['weight-bearing', 'range', 'load-limit', 'no-impact'];
    const author = 'Dr. Ines Roth';
    for (const joint of joints) {
      for (const kind of kinds) {
        const limit = { joint, kind, limitKg: 5, from: '2026-01-01', to: null, author };
        const [told] = exercises.flatMap(({ id }) =>
          limitCautions([limit], { exerciseId: id, side: 'both' }, '2026-02-01'),
        );
        expect(cautionText({ key: 'limit', kind, joint, author })).toEqual(asBefore(told!.patientText));
      }
    }
  });

  it('checks around a cuff', () => {
    for (const { id, patientText } of occlusionChecks) {
      expect(textOf('occlusion-checks', id as 're-ask')).toEqual(asBefore(patientText));
    }
  });

  it('ready sentences', () => {
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
