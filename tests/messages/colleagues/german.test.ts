/** What papers to colleagues say in German: every term of the core has its word, and nothing typed is touched. */
import { describe, expect, it } from 'vitest';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { measurementForms } from '#core/assessment/measurements/measurement-fields.ts';
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import { screeningItems } from '#core/screening/items.ts';
import { phrases } from '#messages/de/colleagues/phrases.ts';

const by = { recordedBy: 'N D' };
const person = { sex: 'female', birthDay: '1960-01-01', errorGroup: 'knee-osteoarthritis-mild' } as const;
const lines = (rows: readonly object[]) => outcomeLines(rows as never, [], person);

describe('terms in German', () => {
  it('are there for every measure and every screening item', () => {
    const asked = [
      ...measurementForms.map(({ title }) => title),
      ...screeningItems.map(({ clinicianLabel }) => clinicianLabel),
    ];
    expect(asked.filter((term) => phrases.term(term) === term)).toEqual([]);
  });

  it('leave what somebody noted as it was typed', () => {
    expect(phrases.term('Kidney disease (which: not said; noted: “eGFR 40, last on 3 Feb”)')).toMatch(
      /^Nierenerkrankung \(welche: nicht gesagt; notiert: „eGFR 40/,
    );
    expect(phrases.term('Stroke or transient ischaemic attack (from memory)')).toBe('Schlaganfall oder TIA');
  });

  it.each(screeningItems.map(({ id, clinicianLabel }) => [id, clinicianLabel]))(
    'say of a finding by %s what was found',
    (from, label) => {
      const said = phrases.reason({ code: from, from, text: 'English.' });
      expect(said).toBe(`${phrases.term(label)}.`);
      expect(phrases.reason({ code: `not-asked-${from}`, from, text: 'E.' })).toContain('Noch nicht gefragt');
    },
  );

  it.each(['age', 'screening', 'care', 'event', 'consent', 'blood-pressure', 'ankle-brachial-index'])(
    'say why a method is closed by %s',
    (from) => {
      expect(phrases.reason({ code: from, from, text: 'English text.' })).not.toContain('English');
    },
  );

  it('name the figures of a blood pressure', () => {
    const text = 'Resting blood pressure 182/96 mmHg on 2026-02-03: held.';
    expect(phrases.reason({ code: 'blood-pressure-hold-all', from: 'blood-pressure', text })).toBe(
      'Ruheblutdruck 182/96 mmHg, über der Grenze.',
    );
  });
});

describe('measurements in German', () => {
  const told = (rows: readonly object[]) =>
    lines(rows).map((line) => [phrases.title(line), phrases.reading(line, line.readings[0]!.text)]);

  it('have their side, place and exercise in German, a comma in the figure, and typed words as typed', () => {
    const day = '2026-02-03';
    expect(
      told([
        { kind: 'grip', day, side: 'left', forceKg: 21.5, ...by },
        { kind: 'pinch', day, pinch: 'key', side: 'right', forceKg: 4.5, ...by },
        { kind: 'hand-span', day, side: 'left', spanMm: 186, ...by },
        { kind: 'chair-stand-30s', day, stands: 9, ...by },
        { kind: 'timed-up-and-go', day, seconds: 11.8, ...by },
        {
          kind: 'repetitions-to-failure',
          day,
          exerciseId: 'knee-extension-seated',
          side: 'right',
          loadKg: 7.5,
          repetitions: 13,
          ...by,
        },
        {
          kind: 'limb-circumference',
          day,
          limb: 'leg',
          side: 'left',
          site: 'mid-thigh',
          circumferenceCm: 54.5,
          ...by,
        },
        { kind: 'patient-chosen-activity', day, activity: 'Walk 2.5 km', score: 4, ...by },
      ]),
    ).toEqual([
      ['Selbst gewählte Tätigkeiten', 'Walk 2.5 km 4'],
      ['Aufstehen vom Stuhl in 30 Sekunden', '9 Mal'],
      ['Timed-up-and-go-Test', '11,8 s'],
      ['Greifkraft: links', '21,5 kg'],
      ['Pinch-Kraft: Schlüsselgriff, rechts', '4,5 kg'],
      ['Handspanne: links', '186 mm'],
      ['Krafttest: Knie strecken im Sitzen, rechts', '13 Wiederholungen mit 7,5 kg'],
      ['Umfang: Bein links, mid-thigh', '54,5 cm'],
    ]);
  });

  it('further ones have movement, manner, steps, unit and rating in German', () => {
    const day = '2026-02-03';
    const moved = { joint: 'right-knee', movement: 'extension', manner: 'passive', degrees: -10 };
    const rated = { joint: 'left-hip', pain: 5, difficulty: null, patientGlobal: 4 };
    expect(
      told([
        { kind: 'pain-function-global', day, ...rated, ...by },
        { kind: 'knee-hip-score', day, joint: 'left-hip', scale: 'function', score: 62.5, ...by },
        { kind: 'range-of-movement', day, ...moved, ...by },
        { kind: 'disease-activity-score', day, index: 'das28-esr', score: 3.1, ...by },
        { kind: 'usual-pace-walk', day, distanceM: 20, seconds: 16, ...by },
        { kind: 'fast-walk-40m', day, seconds: 32, ...by },
        { kind: 'stair-climb', day, steps: 10, seconds: 14.5, ...by },
        {
          kind: 'isometric-force',
          day,
          site: 'Quadriceps',
          side: 'left',
          heldBy: 'by-belt',
          force: 20,
          forceUnit: 'kilograms',
          ...by,
        },
      ]),
    ).toEqual([
      [
        'Angaben (0 bis 10, 10 am schlechtesten): Hüfte links',
        'Schmerz 5, Alltag nicht gefragt, insgesamt 4',
      ],
      ['KOOS- oder HOOS-Kurzwert (100 am besten): Hüfte links, Funktion', '62,5 von 100'],
      ['Bewegungsumfang: Knie rechts, Extension passiv', '−10°'],
      ['Mitgeteilter Aktivitätsindex: DAS28 mit BSG', '3,1, niedrig'],
      ['Gehen in üblichem Tempo: 20 m', '20 m in 16 s (1,25 m/s)'],
      ['Schnelles Gehen über 40 m', '32 s (1,25 m/s)'],
      ['Treppe hinauf und hinab: 10 Stufen', '14,5 s, 10 Stufen'],
      ['Isometrische Kraft: Quadriceps, links, gegen einen Gurt', '196 N (20 kg)'],
    ]);
  });

  it('a change names whose error it was held against', () => {
    const walk = (day: string, seconds: number) => ({ kind: 'timed-up-and-go', day, seconds, ...by });
    const rows = [walk('2026-01-05', 20), walk('2026-03-30', 16)];
    const said = (errorGroup: Parameters<typeof outcomeLines>[2]['errorGroup']) =>
      phrases.change(outcomeLines(rows as never, [], { ...person, errorGroup })[0]!);
    expect(said('knee-arthroplasty-awaited')).toBe(
      'Veränderung: innerhalb des Messfehlers, keine Veränderung genannt (Messfehler 7,3 vor einer Knieendoprothese).',
    );
    expect(said('knee-osteoarthritis-mild')).toContain('(Messfehler 1,1 bei früher Kniearthrose');
    expect(said(null)).toBe('Veränderung: nicht beurteilt.');
  });

  it('say of an effusion its grade, and of an index its band', () => {
    const effusions = [{ joint: 'left-knee', day: '2026-02-03', grade: 'zero' }];
    const [line] = outcomeLines([], effusions as never, person);
    expect([phrases.title(line!), phrases.reading(line!, 'zero')]).toEqual(['Erguss: Knie links', 'keiner']);
    const thumb = [{ joint: 'left-thumb-base', day: '2026-02-03', grade: 'zero' }];
    expect(phrases.title(outcomeLines([], thumb as never, person)[0]!)).toBe(
      'Erguss: Daumensattelgelenk links',
    );
    expect(phrases.reading({ kind: 'joint-counts' }, '12.5, moderate')).toBe('12,5, mittel');
  });
});

describe('a limit in German', () => {
  const limit = (over: Partial<LimitInForce>): LimitInForce => ({
    joint: 'right-knee',
    kind: 'load-limit',
    limitKg: 2.5,
    from: '2026-02-03',
    to: null,
    author: 'Dr Surgeon',
    isExpired: false,
    ...over,
  });
  it('has its figure, its days, who set it, and that it is over where it is', () => {
    expect(phrases.limit(limit({}))).toBe(
      'Knie rechts: Last begrenzt auf 2,5 kg, ab 03.02.2026 bis auf Widerruf. Festgelegt von Dr Surgeon.',
    );
    const range = {
      kind: 'range',
      limitKg: null,
      movement: 'flexion',
      fromDegrees: 0,
      toDegrees: 90,
    } as const;
    expect(phrases.limit(limit({ ...range, to: '2026-03-01', isExpired: true }))).toMatch(
      /erlaubt 0° bis 90° Flexion, ab 03\.02\.2026 bis 01\.03\.2026\..*aufgehoben wurde sie nicht/,
    );
  });
});
