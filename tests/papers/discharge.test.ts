/** The summary of care in German: every line that can stand on it, and nothing of English but what was typed. */
import { describe, expect, it } from 'vitest';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { sideLines } from '#core/assessment/course/side-to-side.ts';
import type { DocumentFacts } from '#core/episode/documents/document-facts.ts';
import { dischargeSheet } from '#papers/end-of-care/end-of-care-sheets.ts';
import { leftInEnglish } from '#tests/messages/german/left-in-english.ts';
import { careFacts } from './care-facts.ts';
import { look } from './plan-papers.ts';

const given = careFacts('Ziel erreicht');
const [item] = given.lines;
const decision = {
  joint: 'right-knee',
  decision: 'ease-back',
  day: '2026-04-18',
  reasons: [{ rule: 'P6', threshold: 'two hours after 2 over the top of usual pain' }],
} as const;
const stands = (day: string, count: number) =>
  ({ kind: 'chair-stand-30s', day, stands: count, recordedBy: 'Tester' }) as const;

const full: DocumentFacts = {
  ...given,
  episode: { ...given.episode, diagnoses: ['Gonarthrose rechts'], goals: ['Einkauf tragen'] },
  lines: [
    { ...item!, last: { ...item!.last, signedOn: '2026-04-01' }, suspended: 'joint-rests' },
    { ...item!, atEnd: false },
    { ...item!, suspended: 'easier-only' },
    { ...item!, suspended: 'everything-rests' },
  ],
  log: { ...given.log, plannedDays: 1, testSessions: 2 },
  decisions: [
    { ...decision, answer: null },
    { ...decision, answer: { kind: 'override', decision: 'hold', reason: 'Gesehen', by: 'Closer' } },
    { ...decision, reasons: [], answer: { kind: 'accept', decision: null, reason: '', by: 'Closer' } },
  ],
  limits: [
    {
      joint: 'right-knee',
      kind: 'load-limit',
      limitKg: 2.5,
      from: '2026-03-02',
      to: '2026-04-01',
      author: 'Dr. Frei',
      isExpired: true,
    },
  ],
  checks: {
    screening: {
      day: '2026-03-02',
      yes: ['Kidney disease (noted: “Niere links”)'],
      notKnown: ['Vasculitis'],
      notAsked: [],
      no: 12,
    },
    measured: [{ title: 'Timed up and go', day: '2026-03-02' }],
    notMeasured: ['Weight', 'Height'],
  },
  outcomes: outcomeLines([stands('2026-03-02', 9), stands('2026-04-28', 12)], [], {
    errorGroup: 'knee-osteoarthritis-mild',
    sex: 'female',
    birthDay: '1958-06-01',
  }),
  sides: sideLines([
    ...(['left', 'right'] as const).map((side, place) => ({
      kind: 'limb-circumference' as const,
      day: '2026-04-28',
      limb: 'leg' as const,
      side,
      site: 'Quadriceps',
      circumferenceCm: 49 + place * 2.5,
    })),
    ...(['left', 'right'] as const).map((side, place) => ({
      kind: 'range-of-movement' as const,
      day: '2026-04-28',
      joint: `${side}-knee` as const,
      movement: 'flexion' as const,
      manner: 'active' as const,
      degrees: 128 - place * 33,
    })),
  ]),
};

const linesOf = (facts: DocumentFacts): readonly string[] => {
  const { from, about, title, parts, signature } = dischargeSheet(facts, '2026-05-04', {
    ...look,
    language: 'de',
  });
  return [...from, about, title, ...parts.flatMap(({ title: of, lines }) => [of, ...lines]), signature ?? ''];
};

/** The clinic's name and that of a test stay as they are. */
const english = (lines: readonly string[]) =>
  lines.filter((line) => leftInEnglish(line.replaceAll(/Ward Street Clinic|Timed-up-and-go-Test/g, '')));

describe('the summary of care in German', () => {
  it('says all of it, and what was typed as it was typed', () => {
    const lines = linesOf(full);
    for (const said of [
      'Diagnosen: Gonarthrose rechts.',
      'Betroffene Gelenke: Knie rechts. Täglich abgefragt: Knie rechts.',
      'Ziele im Wortlaut: „Einkauf tragen“',
      'Überwiesen von: nicht erfasst.',
      'Vom 02.03.2026 bis 30.04.2026, 60 Tage.',
      'Behandlung beendet am 30.04.2026: Ziel erreicht.',
      'Knie strecken im Sitzen, Training mit geringer Last, unterschrieben am 02.03.2026 von Signer One: ',
      'Galt bei Behandlungsende. Die Übung ruhte.',
      'Beendet am 30.04.2026.',
      'Aufstehen vom Stuhl in 30 Sekunden: 9 Mal (02.03.2026), 12 Mal (28.04.2026). Veränderung: über den Messfehler hinaus, besser',
      'Umfang der Extremität: Bein, Quadriceps: links 49 cm (28.04.2026), rechts 51,5 cm (28.04.2026). Die Seiten unterscheiden sich.',
      'Bewegungsumfang: Knie, Flexion aktiv: links 128° (28.04.2026), rechts 95° (28.04.2026). Der Unterschied ist nicht beurteilt.',
      '14 Trainingseinheiten eingetragen, davon 3 als leichteres Training, 2 als Test.',
      '1 Tag war geplant; an 10 davon wurde kein Training eingetragen.',
      'An 41 Tagen wurde der Morgen eingetragen; an 19 von 60 Tagen der Behandlung fehlt er.',
      'Knie rechts, 18.04.2026: verringern; zwei Stunden danach 2 über der Obergrenze des üblichen Schmerzes. Therapeutisch wurde sie nicht beantwortet.',
      'Closer entschied stattdessen „beibehalten“: Gesehen.',
      'keine Regel sprach dagegen. Closer hat sie angenommen.',
      'Last begrenzt auf 2,5 kg, ab 02.03.2026 bis 01.04.2026. Festgelegt von Dr. Frei.',
      'Befragt am 02.03.2026. Antworten nicht bekannt: Vaskulitis. Fragen nicht gestellt: nichts.',
      'Mit Ja beantwortet: Nierenerkrankung (notiert: „Niere links“).',
      'Gemessen, jeweils zuletzt: Timed-up-and-go-Test 02.03.2026.',
      'Nie gemessen: Gewicht; Größe.',
      'entscheidet die zugelassene Fachperson nach den örtlichen Regeln.',
    ])
      expect(lines.join('\n')).toContain(said);
    expect(english(lines)).toEqual([]);
  });

  it('speaks of today where care goes on, and says what there is none of', () => {
    const open = { ...full, end: null, careGoesOn: true };
    const nothing = {
      ...given,
      lines: [],
      end: null,
      episode: { ...given.episode, diagnoses: [], goals: [] },
    };
    const empty = { ...nothing, checks: { ...given.checks, notMeasured: [] } };
    const lines = [...linesOf(open), ...linesOf(empty)];
    for (const said of [
      'Zwischenbericht',
      'Die Behandlung geht weiter: Ein Ende ist nicht erfasst.',
      'Gilt heute. Davon bleibt nur das leichtere Training.',
      'Geltende Grenzen',
      'Ein Ziel in eigenen Worten ist nicht erfasst.',
      'In diesem Zeitraum wurde keine Übung unterschrieben.',
      'In diesem Zeitraum wurde nichts entschieden.',
      'Als geltend ist keine Grenze erfasst.',
    ])
      expect(lines).toContainEqual(expect.stringContaining(said));
    expect(english(lines)).toEqual([]);
  });
});
