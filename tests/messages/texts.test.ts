/** Codes of the core become texts in every language. */
import { describe, expect, it } from 'vitest';
import { type RuleId, rulesOf } from '#core/decision/rules/table.ts';
import { uncheckedThings } from '#core/prescribing/cautions/ids.ts';
import { cautionText, occlusionCheckText } from '#messages/cautions.ts';
import { consentText } from '#messages/consents.ts';
import { decisionText, holdText, ruleText } from '#messages/decisions.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { hoursText } from '#messages/hours.ts';
import { languages } from '#messages/languages.ts';
import { messageText, readySentences } from '#messages/ready.ts';
import { refusalText } from '#messages/refusals.ts';
import { detailText, limbChoices, questionText } from '#messages/screening.ts';
import { sentenceRows } from '#messages/sentence-rows.ts';
import { asTyped } from '#messages/text.ts';

describe('a caution', () => {
  it('names all that nobody has checked, in order', () => {
    const text = cautionText({ key: 'not-checked', things: ['clots', 'blood-pressure'] });
    expect(text.en).toBe(
      'Nobody has checked: blood clots that give no signs; your blood pressure. If you worry about one of these, ask before you start.',
    );
    expect(text.de).toContain('Blutgerinnsel ohne Anzeichen; Ihr Blutdruck.');
    expect(cautionText({ key: 'not-checked', things: uncheckedThings }).de).not.toMatch(/[{}]/);
  });

  it('names the joint and who set it where a limit stands', () => {
    const text = cautionText({
      key: 'limit',
      kind: 'load-limit',
      joint: 'left-knee',
      author: 'Dr. Ines Roth',
    });
    expect(text.en).toBe('There is a limit for your left knee: load. Keep to it as Dr. Ines Roth told you.');
    expect(text.de).toBe(
      'Für Ihr linkes Knie gilt eine Grenze: wie schwer die Last ist. Halten Sie sie ein, wie Dr. Ines Roth es Ihnen gesagt hat.',
    );
  });

  it('says the kilograms of a load limit that has a figure', () => {
    const limit = {
      key: 'limit',
      kind: 'load-limit-kg',
      joint: 'left-knee',
      author: 'Dr. Ines Roth',
    } as const;
    const text = cautionText({ ...limit, kg: 2.5 });
    expect(text.en).toBe(
      'There is a limit for your left knee: a load of 2.5 kg at most. Keep to it as Dr. Ines Roth told you.',
    );
    expect(text.de).toContain('gilt eine Grenze: höchstens 2,5 kg Last.');
    const unweighted = cautionText({ ...limit, kind: 'load-limit-kg-none', kg: 2.5 });
    expect(unweighted.en).toMatch(/2\.5 kg at most.*done without a weight: add none\.$/);
    expect(unweighted.de).toMatch(/2,5 kg Last.*ohne Gewicht: Nehmen Sie keines dazu\.$/);
  });

  it('has none of the words that stay with the clinician', () => {
    const areas = ['cautions', 'unchecked', 'limits', 'occlusion-checks'];
    const found = sentenceRows(everyLanguage.en).filter(
      ({ area, text }) =>
        areas.includes(area) &&
        /\b(rung|gate|cap|unlock|level|contraindicat\w*|occlusion|distal)\b/i.test(text),
    );
    expect(found).toEqual([]);
  });

  it('reads the same wherever it stands otherwise', () => {
    expect(cautionText({ key: 'joint-knee' }).de).toMatch(/Knie/);
    expect(occlusionCheckText('pulse-before').en).toBe('Feel the pulse where you were shown.');
  });
});

describe('a decision, a reason, a question', () => {
  it('is found by its code', () => {
    expect(decisionText('pause').de).toBe(
      'Machen Sie keine Übungen mehr, bis wir mit Ihnen gesprochen haben.',
    );
    expect(ruleText('P1').en).toBe('Your pain was very strong, so do less and speak with us today.');
    expect(holdText('taken-back').en).toMatch(/^You withdrew/);
    expect(questionText('fever-or-unwell').en).toMatch(/fever/);
    expect(detailText('heart-condition.valve-disease').en).toBe('Valve disease');
  });

  it('is another sentence for each rule, in each language', () => {
    for (const { tag } of languages) {
      const texts = rulesOf(2).map(({ id }) => ruleText(id as RuleId)[tag]);
      expect(new Set(texts).size).toBe(rulesOf(2).length);
    }
  });

  it('names each arm and leg that can be ticked', () => {
    expect(limbChoices.map(({ id, name }) => [id, name.en, name.de])).toEqual([
      ['left-arm', 'left arm', 'linker Arm'],
      ['right-arm', 'right arm', 'rechter Arm'],
      ['left-leg', 'left leg', 'linkes Bein'],
      ['right-leg', 'right leg', 'rechtes Bein'],
    ]);
  });
});

describe('a wording of the clinic and a message', () => {
  it('stay in the words they were written in', () => {
    expect(consentText('export', 'The clinic in Ward Street may.')).toEqual(
      asTyped('The clinic in Ward Street may.'),
    );
    expect(consentText('export', null).de).toMatch(/^Die Praxis/);
    for (const { text } of readySentences) {
      expect(messageText(text.en)).toEqual(text);
      expect(messageText(`${text.en} Ring me, Ana.`)).toEqual(asTyped(`${text.en} Ring me, Ana.`));
    }
  });
});

describe('a refusal', () => {
  it('names the tries and the seconds that are left', () => {
    expect(refusalText('wrong-pin', { left: 1 }).de).toMatch(/Noch 1 Versuch\.$/);
    expect(refusalText('wrong-pin', { left: 4 }).de).toMatch(/Noch 4 Versuche\.$/);
    expect(refusalText('wrong-pin', { left: 1 }).en).toMatch(/1 try left\.$/);
    expect(refusalText('wait-seconds', { seconds: 45 }).de).toMatch(/45 Sekunden/);
  });
});

describe('monitoring hours', () => {
  it('are said with the days together that lie together', () => {
    const week = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'] as const;
    expect(hoursText([{ days: week, from: '08:30', to: '18:30' }])).toMatchObject({
      en: 'Monday to Friday, 8:30 to 18:30',
      de: 'Montag bis Freitag, 8:30 bis 18:30 Uhr',
    });
    expect(
      hoursText([
        { days: ['Mon', 'Tue', 'Thu'], from: '10:00', to: '12:05' },
        { days: ['Sat'], from: '00:00', to: '09:00' },
      ]).en,
    ).toBe('Monday, Tuesday and Thursday, 10:00 to 12:05; Saturday, 0:00 to 9:00');
  });
});
