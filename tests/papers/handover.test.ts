/** The page for the colleague in German: every line that can stand on it, and nothing of English but what was typed. */
import { expect, it } from 'vitest';
import { handoverSheet } from '#papers/handover/handover-sheet.ts';
import { leftInEnglish } from '#tests/messages/german/left-in-english.ts';
import { look } from './plan-papers.ts';
import { handover } from './sheet-papers.ts';

const dangers = [
  { kind: 'red-flag', flags: ['calf-pain-swelling'], facts: { failedAttempts: 1 } },
  { kind: 'same-day-contact', flags: [], facts: { rule: 'S1', threshold: 'effusion 3+' } },
] as const;

const full = handover({
  episodeStatus: {
    state: 'in-care',
    change: { to: 'open', on: '2026-03-02', reason: 'Überweisung', by: 'Closer' },
    returned: null,
  } as never,
  dangers: dangers.map((one, at) => ({
    ...one,
    joint: 'right-knee',
    sentence: 'The core in English.',
    since: '2026-04-19',
    acknowledgedBy: at === 0 ? 'Rowan Example' : null,
    assignedName: at === 0 ? null : 'Rowan Example',
  })),
  clinicianPauses: [
    { joint: null, cause: 'warning-sign', by: 'Rowan Example', reason: 'x', since: '2026-04-19' },
    { joint: 'left-knee', cause: 'other', by: 'Rowan Example', reason: 'Reise', since: '2026-04-18' },
  ],
  pauses: [
    {
      decisionId: 'd',
      joint: 'right-knee',
      since: '2026-04-19',
      owner: { name: 'Rowan Example', until: '2026-04-21', isOver: true },
    },
  ],
  limits: [
    {
      joint: 'right-knee',
      kind: 'no-impact',
      limitKg: null,
      from: '2026-03-02',
      to: null,
      author: 'Dr. Frei',
      isExpired: false,
    },
  ],
  closed: [
    {
      method: 'occlusion',
      code: 'past-clot',
      from: 'past-clot',
      text: 'A clot.',
      clearedBy: 'physician',
      limbs: [{ limb: 'leg', side: 'right' }],
    },
  ],
  decisions: [
    {
      joint: 'right-knee',
      decision: 'ease-back',
      day: '2026-04-18',
      reasons: [
        { rule: 'W2', threshold: 'swelling answered as clear' },
        { rule: 'P6', threshold: 'two hours after 2 over the top of usual pain' },
      ],
      answeredName: null,
    },
  ],
  unsigned: handover().inForce,
});

it('says all of it in German, and what was typed as it was typed', () => {
  const sheet = handoverSheet(full, { ...look, language: 'de' });
  const lines = [
    ...sheet.from,
    sheet.about,
    ...sheet.parts.flatMap(({ title, lines: all }) => [title, ...all]),
  ];
  for (const said of [
    'In Behandlung seit 02.03.2026: Überweisung.',
    'Alles ist ausgesetzt; ein Kontaktversuch, niemand erreicht. Seit 19.04.2026. Bestätigt von Rowan Example. Niemand hat es übernommen.',
    'Knie rechts: heute noch anrufen (S1: Erguss 3+). Seit 19.04.2026. Nicht bestätigt. Liegt bei Rowan Example.',
    'Dringendes, das nicht rechtzeitig bestätigt wird, geht an Rowan Example.',
    'Alles, am 19.04.2026 ausgesetzt von Rowan Example: nach einem Warnzeichen.',
    'Knie rechts, ausgesetzt seit 19.04.2026. Rowan Example kümmert sich darum bis 21.04.2026; dieser Tag ist vorbei.',
    'Knie rechts: keine Stoßbelastung, ab 02.03.2026 bis auf Widerruf. Festgelegt von Dr. Frei.',
    'Tiefe Venenthrombose oder Lungenembolie, früher oder jetzt. Freigabe nur ärztlich.',
    'Knie rechts, 18.04.2026: verringern. W2 (Schwellung als deutlich angegeben); P6 (zwei Stunden danach 2 über der Obergrenze des üblichen Schmerzes). Bisher weder angenommen noch anders entschieden.',
  ])
    expect(lines.join('\n')).toContain(said);
  // A street and the name of a clinic stay as they are.
  expect(lines.filter((line) => leftInEnglish(line.replaceAll('Ward Street Clinic', '')))).toEqual([]);
});

it.each([
  ['en', 4, 'T4 (any red flag). Not'],
  ['en', 5, 'T4 (any red flag); and 1 more. Not'],
  ['de', 6, 'T4 (ein Warnzeichen); und 2 weitere. Bisher'],
] as const)('in %s, of %i reasons tells four and counts the rest', (language, count, said) => {
  const reasons = Array.from({ length: count }, (_, at) => ({
    rule: `T${at + 1}`,
    threshold: 'any red flag',
  }));
  const one = { joint: 'right-knee', decision: 'hold', day: '2026-04-18', answeredName: null } as const;
  const sheet = handoverSheet(handover({ decisions: [{ ...one, reasons }] }), { ...look, language });
  expect(sheet.parts[5]?.lines[0]).toContain(said);
});
