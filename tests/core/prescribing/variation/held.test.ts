/** A dose of holds and one with a mark: what is filled in, what is refused, how it is said. */
import { describe, expect, it } from 'vitest';
import { exercises, exercisesInFamily } from '#core/exercises/catalogue.ts';
import { changesFromInForce } from '#core/prescribing/changes-from-in-force.ts';
import { doseInShort, setsInShort } from '#core/prescribing/dose-in-short.ts';
import { requestOfDose } from '#core/prescribing/request-of-dose.ts';
import { markKept } from '#core/prescribing/variation/held.ts';
import { markedThing } from '#core/prescribing/variation/marked-things.ts';
import { variationSettings } from '#core/prescribing/variation/settings.ts';
import { proposeVariationDose } from '#core/prescribing/variation/variation-dose.ts';
import type { VariationDoseInput } from '#core/prescribing/variation/variation-dose-input.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';

const ask = (input: Omit<VariationDoseInput, 'person' | 'side'>) =>
  proposeVariationDose(
    { person: { sex: 'female', massKg: 65, statureCm: 162 }, side: 'left', ...input },
    defaultsOf(variationSettings),
  );
const proposed = (input: Parameters<typeof ask>[0]) => {
  const outcome = ask(input);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refused));
  return outcome.result;
};
const refused = (input: Parameters<typeof ask>[0]) => {
  const outcome = ask(input);
  return outcome.ok ? [] : outcome.refused.map(({ field }) => field);
};
const thumb = { exerciseId: 'thumb-out-hold' } as const;
const putty = { exerciseId: 'putty-squeeze' } as const;

const notesOf = (input: Parameters<typeof ask>[0]) => {
  const outcome = ask(input);
  return outcome.ok ? outcome.notes : [];
};

describe('what is told with a dose whose load nobody knows', () => {
  it('is that no mark was given, where the piece carries one', () => {
    const codes = (input: Parameters<typeof ask>[0]) => notesOf(input).map(({ code }) => code);
    expect(codes(putty)).toContain('mark-not-given');
    expect(codes({ ...putty, mark: 1 })).not.toContain('mark-not-given');
    expect(codes(thumb)).not.toContain('mark-not-given');
  });

  it('is never that it was computed', () => {
    const told = notesOf(thumb).find(({ code }) => code === 'clinician-decides')?.text;
    expect(told).toMatch(/^No load was computed; the joint was not asked\./);
  });
});

describe('a dose of holds', () => {
  it('is filled from what the clinic chose for holds: 5 to 10 of 5 s, let go for 5 s, steps to 10 s', () => {
    expect(proposed(thumb).dose).toMatchObject({
      repetitions: { low: 5, high: 10 },
      hold: { seconds: 5, mostSeconds: 10 },
      secondsPerRepetition: 10,
    });
    expect(proposed(thumb).working.map(({ text }) => text)).toEqual(
      expect.arrayContaining(['Holds: 5 to 10.', 'Each held 5 s, not counted if let go before.']),
    );
    expect(proposed(putty).dose).not.toHaveProperty('hold');
  });

  it('keeps what was typed, and a longer hold raises the longest with it', () => {
    expect(proposed({ ...thumb, holdSeconds: 20 }).dose.hold).toEqual({ seconds: 20, mostSeconds: 20 });
    expect(proposed({ ...thumb, holdSeconds: 4, mostHoldSeconds: 4 }).dose.hold).toEqual({
      seconds: 4,
      mostSeconds: 4,
    });
  });

  it('has an easier session of the same holds, fewer', () => {
    expect(proposed(thumb).badDay).toMatchObject({
      sets: 1,
      repetitions: { low: 5, high: 5 },
      hold: { seconds: 5 },
    });
  });

  it('refuses seconds without a hold, a tempo with one, and a longest that is shorter', () => {
    expect(refused({ ...putty, holdSeconds: 5 })).toEqual(['input.holdSeconds']);
    expect(refused({ ...thumb, secondsPerRepetition: 4 })).toEqual(['input.secondsPerRepetition']);
    expect(refused({ ...thumb, holdSeconds: 6, mostHoldSeconds: 5 })).toEqual(['input.mostHoldSeconds']);
    expect(refused({ ...thumb, holdSeconds: 6, mostHoldSeconds: 6 })).toEqual([]);
  });

  it('is jotted down with its seconds, and asked for again by them', () => {
    const { dose } = proposed(thumb);
    expect(setsInShort(dose)).toBe('3 × 5–10 × 5 s');
    const again = requestOfDose({ measurements: [] }, dose);
    expect(again).toMatchObject({ holdSeconds: 5, mostHoldSeconds: 10 });
    expect(again).not.toHaveProperty('secondsPerRepetition');
    const longer = proposed({ ...thumb, holdSeconds: 7 }).dose;
    const more = { ...dose, repetitions: { low: 7, high: 10 } };
    expect(changesFromInForce(dose, more).map(({ text }) => text)).toEqual(['Holds: 5–10 → 7–10.']);
    expect(changesFromInForce(dose, longer).map(({ text }) => text)).toEqual([
      'Each hold: 5 s → 7 s (+40.0 %).',
    ]);
  });

  it('no family mixes exercises that are held with others', () => {
    const mixed = exercises.filter(({ family, isHeld }) =>
      exercisesInFamily(family).some((one) => one.isHeld !== isHeld),
    );
    expect(mixed.map(({ id }) => id)).toEqual([]);
  });
});

describe('a mark', () => {
  it('has its number on what the catalogue names as equipment, of every exercise', () => {
    const equipment = { band: 'band', 'exercise putty': 'putty', 'soft rubber ring': 'ring' } as const;
    for (const { id, equipment: needs } of exercises) {
      const named = Object.entries(equipment).find(([need]) => needs.includes(need as never));
      expect([id, markedThing(id)]).toEqual([id, named?.[1] ?? null]);
    }
  });

  it('goes with putty, rings and bands alone, and is said without a force', () => {
    expect(markedThing('putty-squeeze')).toBe('putty');
    expect(markedThing('thumb-out-ring')).toBe('ring');
    expect(markedThing('curl-band')).toBe('band');
    expect(markedThing('wrist-bend-up')).toBeNull();
    const { dose, working } = proposed({ ...putty, mark: 2 });
    expect(dose.mark).toBe(2);
    expect(doseInShort(dose)).toBe('3 × 8–15, mark 2');
    expect(working.map(({ text }) => text)).toContain(
      'Mark 2 of the clinic’s own row; its force is not known.',
    );
    expect(requestOfDose({ measurements: [] }, dose)).toMatchObject({ mark: 2 });
    expect(refused({ ...thumb, mark: 2 })).toEqual(['input.mark']);
  });
});

describe('what is done without movement', () => {
  it.each([
    'knee-press-down',
    'wall-sit',
    'pillow-squeeze',
    'shoulder-blade-squeeze',
    'arm-turn-out-hold',
    'belly-press',
    'forearm-plank-knees',
    'forearm-plank',
    'side-plank-knees',
    'neck-press-front',
    'neck-press-side',
  ])('is dosed by holds and their seconds and not by repetitions: %s', (exerciseId) => {
    const { limbsAtOnce } = exercises.find(({ id }) => id === exerciseId)!;
    const side = limbsAtOnce === 'both' ? { side: 'both' as const } : {};
    expect(proposed({ exerciseId, ...side }).dose).toMatchObject({
      hold: { seconds: 5, mostSeconds: 10 },
      repetitions: { low: 5, high: 10 },
    });
  });
});

describe('a band known by its mark alone', () => {
  const band = { exerciseId: 'knee-extension-band', side: 'left' } as const;

  it('is dosed by it without a weight, on every exercise with a band', () => {
    const { dose } = proposed({ ...band, mark: 3 });
    expect(dose).toMatchObject({ method: 'variation', mark: 3, addedKg: 0, effectiveLoadKg: null });
    const bands = exercises.filter(({ equipment }) => equipment.includes('band'));
    expect(bands.length).toBeGreaterThan(8);
    expect(bands.filter(({ methods }) => !methods.includes('variation')).map(({ id }) => id)).toEqual([]);
  });

  it('without a mark says that it names no band', () => {
    const note = notesOf(band).find(({ code }) => code === 'mark-not-given');
    expect(note?.text).toMatch(/which band to use/);
  });

  it('keeps its mark on another exercise with a band, and on nothing else', () => {
    const { dose } = proposed({ ...band, mark: 3 });
    expect(markKept(dose, 'leg-press-band').mark).toBe(3);
    expect(markKept(dose, 'wall-sit')).not.toHaveProperty('mark');
    expect(markKept(dose, 'putty-squeeze')).not.toHaveProperty('mark');
  });
});

describe('what is known of strength work for a hand', () => {
  const codes = (exerciseId: string, side: 'left' | 'both' = 'left') => {
    const outcome = ask({ exerciseId, ...(side === 'both' ? { side } : {}) } as Parameters<typeof ask>[0]);
    return outcome.ok ? outcome.notes : [];
  };

  it('is told with every dose for a hand and with no other: grip 1.35 kg, −0.84 to 3.54 (Magni 2017)', () => {
    const told = codes('thumb-out-hold').find(({ code }) => code === 'hand-evidence');
    expect(told?.text).toContain('1.35 kg, −0.84 to 3.54');
    expect(codes('putty-squeeze').map(({ code }) => code)).toContain('hand-evidence');
    expect(codes('sit-to-stand-chair', 'both').map(({ code }) => code)).not.toContain('hand-evidence');
    expect(codes('wrist-thumb-side-lift').map(({ code }) => code)).not.toContain('hand-evidence');
  });
});
