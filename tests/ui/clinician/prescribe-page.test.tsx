import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { NumberField } from '#core/calculations/describe.ts';
import { methods } from '#core/prescribing/methods.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import type { DangerAnswer, Patient } from '#ui/clinician/answers.ts';
import { addressOf, choiceAddress } from '#ui/clinician/prescribing/choose/choice-address.ts';
import { figureChange } from '#ui/clinician/prescribing/figure-change.ts';
import { heldInWords, heldNow } from '#ui/clinician/prescribing/held.ts';
import { MethodChoice } from '#ui/clinician/prescribing/method-choice.tsx';
import { keptWith, typedBefore } from '#ui/clinician/prescribing/typed-before/typed-before.ts';

const profile = { followedJoints: ['right-knee', 'left-hip'] } as unknown as NonNullable<Patient['profile']>;

describe('the address of the page of prescribing', () => {
  it('begins with the joint that is followed and what is at home, and leaves both to a search', () => {
    expect(choiceAddress({}, profile)).toMatchObject({ joint: 'right-knee', isAtHome: true });
    const searched = choiceAddress({ find: '1', words: 'squat' }, profile);
    expect(searched).toMatchObject({ words: 'squat', isAtHome: false });
    expect(searched).not.toHaveProperty('joint');
    expect(choiceAddress({}, null)).toMatchObject({ isAtHome: false });
  });

  it('reads back all that it was made of', () => {
    const at = {
      words: 'knee & hip',
      method: 'low-load',
      region: 'leg',
      joint: 'left-hip',
      trains: 'glutes',
      isAtHome: true,
      isAll: true,
      exerciseId: 'clam',
      side: 'left',
      line: 'item-1',
    } as const;
    const [, query] = addressOf('somebody', at).split('?');
    expect(choiceAddress(Object.fromEntries(new URLSearchParams(query)), profile)).toEqual(at);
  });

  it('takes nothing that is no such choice', () => {
    const odd = choiceAddress(
      { find: '1', method: 'magic', joint: 'third-knee', side: ['left', 'right'] },
      profile,
    );
    expect(odd).toEqual({ words: '', isAtHome: false, isAll: false });
  });
});

describe('what a figure typed changes', () => {
  const load: NumberField = { name: 'loadKg', kind: 'number', unit: 'kg' };
  const rest: NumberField = { name: 'restSeconds', kind: 'integer', unit: 's' };
  const owned = [9, 10, 11, 11.5];

  it.each([
    ['10', '10', null],
    ['10', '9', { text: '−1 kg, −10 %', isCare: false }],
    ['10', '11', { text: '+1 kg, +10 %', isCare: false }],
    ['10', '11.5', { text: '+1.5 kg, +15 %: over 10 %', isCare: true }],
    ['10', '10.4', { text: 'Not at home. Nearest: 10, 11 kg.', isCare: true }],
    ['10', 'ten', null],
    ['10', '', { text: 'cleared: the clinic’s own figure', isCare: false }],
    [undefined, '10', null],
    [undefined, '20', { text: 'Not at home. Nearest: 11.5 kg.', isCare: true }],
  ])(
    'is said in kilograms and as a share, over 10 % by name, or as not at home: from %s to %s kg',
    (now, typed, change) => {
      expect(figureChange(load, now, typed, owned)).toEqual(change);
    },
  );

  it('is told in its unit for every other figure, and never as a share', () => {
    expect(figureChange(rest, '90', '60', null)).toEqual({ text: '−30 s', isCare: false });
    expect(figureChange(rest, '90', '120', null)).toEqual({ text: '+30 s', isCare: false });
  });
});

const clock = { zone: 'Europe/Dublin', now: Date.parse('2026-11-29T10:00:00Z') };
const signAt = Date.parse('2026-11-27T08:00:00Z');
const sign = (endedBy: unknown) => ({
  sign: { id: 's', reportedAt: signAt, flags: ['calf-pain-swelling'] },
  endedBy,
});
const pause = (over: object, resumed: readonly string[] = [], isSignOpen = false) => ({
  pause: { joint: null, at: signAt, ...over },
  isSignOpen,
  resumedItemIds: new Set(resumed),
});
const danger = (signs: readonly unknown[], pauses: readonly unknown[]) =>
  ({ plan: { signs, pauses } }) as unknown as DangerAnswer;

describe('what holds exercises back', () => {
  it('is an open warning sign by its day, with the pause it made said once; an ended one is not said', () => {
    const held = heldNow(danger([sign(null)], [pause({}, [], true)]), clock, null);
    expect(heldInWords(held)).toBe('the warning sign of 27 Nov (painful, swollen or warm calf)');
    expect(heldNow(danger([sign({})], []), clock, null)).toEqual([]);
  });

  it('is a pause that goes on after its sign has ended, until the exercise is resumed', () => {
    const going = danger([sign({})], [pause({}, ['resumed'])]);
    expect(heldInWords(heldNow(going, clock, null))).toBe('the pause since 27 Nov');
    expect(heldInWords(heldNow(going, clock, 'resumed'))).toBeNull();
  });

  it('is a pause of a joint for what loads that joint, and for nothing else', () => {
    const held = heldNow(danger([], [pause({ joint: 'right-knee' })]), clock, null);
    expect(heldInWords(held, ['right-knee', 'right-hip'])).toBe('the pause of the right knee since 27 Nov');
    expect(heldInWords(held, ['left-knee'])).toBeNull();
    expect(heldInWords(held)).toBeNull();
  });
});

describe('the line of a method', () => {
  const outcomes = methods.flatMap((method) =>
    (['arm', 'leg'] as const).flatMap((limb) =>
      (['left', 'right'] as const).map(
        (side): MethodOutcome => ({ method, limb, side, eligibility: 'open', reasons: [] }),
      ),
    ),
  );
  const html = (held: ReturnType<typeof heldNow>) =>
    renderToStaticMarkup(
      <MethodChoice patientId="p" outcomes={outcomes} held={held} at={choiceAddress({}, null)} />,
    );

  it('says eligible where nothing holds it', () => {
    expect(html([])).toContain('Eligible on every limb');
  });

  it('never calls a method eligible beside an open warning sign, and says which sign holds it', () => {
    const text = html(heldNow(danger([sign(null)], []), clock, null));
    expect(text).not.toContain('Eligible');
    expect(text.split('Open by screening on every limb, held by the warning sign of 27 Nov')).toHaveLength(4);
  });
});

describe('what was typed for a dose and neither signed nor added', () => {
  const knee = { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' };
  const start = { exerciseId: 'knee-extension-seated', sets: '2' };

  it('is there again for the same exercise, and for no other', () => {
    const kept = keptWith({}, knee, { ...start, sets: '3', loadKg: '4' }, start);
    expect(typedBefore(kept, knee)).toEqual({ sets: '3', loadKg: '4' });
    expect(typedBefore(kept, { ...knee, side: 'left' })).toEqual({});
    expect(typedBefore(kept, { ...knee, itemId: 'in-force' })).toEqual({});
  });

  it('goes once nothing differs from how the form starts, and leaves what was typed for others', () => {
    const line = { ...knee, itemId: 'in-force' };
    const both = keptWith(keptWith({}, knee, { sets: '3' }, start), line, { sets: '4' }, start);
    expect(typedBefore(keptWith(both, knee, start, start), line)).toEqual({ sets: '4' });
    expect(typedBefore(keptWith(both, knee, start, start), knee)).toEqual({});
  });

  it('keeps that a figure filled in was cleared', () => {
    expect(typedBefore(keptWith({}, knee, { ...start, sets: '' }, start), knee)).toEqual({ sets: '' });
  });
});
