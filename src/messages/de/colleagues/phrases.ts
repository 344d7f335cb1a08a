/** What the core says to colleagues, in German. What people typed stays as typed. */
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import { exercises as catalogue } from '#core/exercises/catalogue.ts';
import type { Movement } from '#core/exercises/movements.ts';
import { screeningItem } from '#core/screening/items.ts';
import type { Day } from '#core/time/day.ts';
import { exerciseName } from '../../exercises.ts';
import type { ColleaguePhrases } from '../../papers/colleague-phrases.ts';
import { forms } from '../forms.ts';
import { decided } from './decided.ts';
import { health } from './health.ts';
import { words } from './letter.ts';
import { trade } from './trade.ts';

/** "2026-02-03" → "03.02.2026", as practices write it. */
const day = (value: Day): string => value.split('-').toReversed().join('.');

const figure = (value: number): string =>
  String(Math.round(value * 10) / 10)
    .replace('.', ',')
    .replace('-', '−');

/** "(from memory)" is said of our own source, not of the person. */
const bare = (term: string): string => term.replace(' (from memory)', '');

const remarks: readonly (readonly [RegExp, string])[] = [
  [/which: not said/g, 'welche: nicht gesagt'],
  [/limb: not said/g, 'Arm oder Bein: nicht gesagt'],
  [/joint: not said/g, 'Gelenk: nicht gesagt'],
  [/noted: “([^”]*)”/g, 'notiert: „$1“'],
  [/last on /g, 'zuletzt '],
];

const remark = (said: string): string => remarks.reduce((text, [from, to]) => text.replace(from, to), said);

/** "Kidney disease (noted: “…”)": the term in German, its remarks behind it. */
const term = (said: string): string => {
  const known = trade[bare(said)];
  if (known) return known;
  const at = Object.keys(trade)
    .filter((one) => bare(said).startsWith(`${one} (`))
    .toSorted((a, b) => b.length - a.length)[0];
  if (!at) return said;
  return trade[at] + remark(bare(said).slice(at.length));
};

const sideWords: Readonly<Record<string, string>> = { left: 'links', right: 'rechts', both: 'beidseits' };
const limbWords: Readonly<Record<string, string>> = { arm: 'Arm', leg: 'Bein' };

const partOf = (part: string): string => {
  const limb = /^(left|right) (arm|leg)$/.exec(part);
  if (limb) return `${limbWords[limb[2]!]} ${sideWords[limb[1]!]}`;
  const joint = /^(left|right) [a-z]+$/.test(part) ? part.replace(' ', '-') : null;
  return joint ? (forms.joint?.(joint, 'label') ?? part) : (sideWords[part] ?? part);
};

/** An exercise has commas in its name, so it is looked for whole. */
const subjectIn = (subject: string): string => {
  const [, name = subject, side] = /^(.+), (left|right|both)$/.exec(subject) ?? [];
  const exercise = catalogue.find((one) => one.title === name);
  if (!exercise) return subject.split(', ').map(partOf).join(', ');
  return [exerciseName(exercise.id).de, ...(side ? [sideWords[side]] : [])].join(', ');
};

const title: ColleaguePhrases['title'] = (line) => {
  const whole = trade[line.title];
  if (whole) return whole;
  const [, name = line.title, rest = ''] = /^([^:,]+)[:,] (.*)$/.exec(line.title) ?? [];
  return `${trade[name] ?? name}${rest ? `: ${subjectIn(rest)}` : ''}`;
};

const units: Readonly<Record<string, string>> = { stands: 'Mal', points: 'Punkte' };

const gradeWords: Readonly<Record<string, string>> = { zero: 'keiner', trace: 'Spur' };
const bandWords: Readonly<Record<string, string>> = {
  remission: 'Remission',
  low: 'niedrig',
  moderate: 'mittel',
  high: 'hoch',
};

const withComma = (text: string): string => text.replace(/(\d)\.(\d)/g, '$1,$2');

const readings: Readonly<Record<string, (text: string) => string>> = {
  'patient-chosen-activity': (text) => text.replaceAll('(answered at home)', '(zu Hause beantwortet)'),
  'chair-stand-30s': (text) => text.replace('stands', 'Mal'),
  'repetitions-to-failure': (text) => withComma(text.replace('repetitions with', 'Wiederholungen mit')),
  'joint-counts': (text) =>
    text === 'not worked out'
      ? 'nicht berechnet'
      : withComma(text).replace(/[a-z]+$/, (band) => bandWords[band] ?? band),
  effusion: (text) => gradeWords[text] ?? text,
};

const verdicts: Readonly<Record<OutcomeLine['change']['verdict'], string>> = {
  better: 'über den Messfehler hinaus, besser',
  worse: 'über den Messfehler hinaus, schlechter',
  'within-error': 'innerhalb des Messfehlers, keine Veränderung genannt',
  'not-judged': 'nicht beurteilt',
};

const change = ({ drawn, change: { verdict }, readings: all }: OutcomeLine): string => {
  if (all.length < 2) return 'Einmal gemessen; für eine Veränderung braucht es eine zweite Messung.';
  const error = drawn.error === null || drawn.grades ? '' : ` (Messfehler ${figure(drawn.error)})`;
  return `Veränderung: ${verdicts[verdict]}${error}.`;
};

const limitWords: Readonly<Record<LimitInForce['kind'], string>> = {
  'weight-bearing': 'Belastung begrenzt',
  range: 'Bewegungsumfang begrenzt',
  'load-limit': 'Last begrenzt',
  'no-impact': 'keine Stoßbelastung',
  methods: 'nicht jede Methode',
  none: 'keine Grenze',
};

const movementWords: Readonly<Record<Movement, string>> = {
  flexion: 'Flexion',
  extension: 'Extension',
  abduction: 'Abduktion',
  adduction: 'Adduktion',
  'outward-rotation': 'Außenrotation',
  'inward-rotation': 'Innenrotation',
  dorsiflexion: 'Dorsalextension',
  plantarflexion: 'Plantarflexion',
  pronation: 'Pronation',
  supination: 'Supination',
  'radial-deviation': 'Radialabduktion',
  'ulnar-deviation': 'Ulnarabduktion',
  inversion: 'Inversion',
  eversion: 'Eversion',
  'side-bend': 'Seitneigung',
  rotation: 'Rotation',
};

const bearingWords: Readonly<Record<NonNullable<LimitInForce['weightBearing']>, string>> = {
  none: 'keine Belastung',
  touch: 'nur Sohlenkontakt oder Berühren',
  partial: 'Teilbelastung',
  'as-tolerated': 'Belastung nach Beschwerden',
};

/** What a limit allows, as far as it says. */
const allowedIn = (one: LimitInForce): string => {
  const { weightBearing, bearKg, withoutMethods, movement, fromDegrees, toDegrees } = one;
  if (withoutMethods)
    return `, ohne ${withoutMethods.map((method) => words[`method-${method}`]).join(' und ')}`;
  if (weightBearing) return `, ${bearingWords[weightBearing]}${bearKg ? ` bis ${figure(bearKg)} kg` : ''}`;
  return movement == null || fromDegrees == null || toDegrees == null
    ? ''
    : `, erlaubt ${fromDegrees}° bis ${toDegrees}° ${movementWords[movement]}`;
};

const limit = (one: LimitInForce): string => {
  const most = one.limitKg === null ? allowedIn(one) : ` auf ${figure(one.limitKg)} kg`;
  const until = one.to === null ? 'bis auf Widerruf' : `bis ${day(one.to)}`;
  const over = one.isExpired ? ' Der letzte Tag ist vorbei, aufgehoben wurde sie nicht.' : '';
  const where = forms.joint?.(one.joint, 'label') ?? one.joint;
  return `${where}: ${limitWords[one.kind]}${most}, ab ${day(one.from)} ${until}. Festgelegt von ${one.author}.${over}`;
};

const causes: Readonly<Record<string, string>> = {
  age: 'Unter 18 Jahren oder Alter nicht bekannt.',
  screening: 'Es liegt keine gültige Befragung zur Gesundheit vor.',
  care: 'Die Behandlung ist beendet oder unterbrochen.',
  event: 'Nach einem Ereignis ist die Befragung zur Gesundheit noch nicht wiederholt.',
  consent: 'Die Einwilligung dafür liegt nicht vor.',
  'blood-pressure': 'Ruheblutdruck über der Grenze.',
  'ankle-brachial-index': 'Knöchel-Arm-Index außerhalb des Normbereichs.',
};

const reason: ColleaguePhrases['reason'] = ({ code, from, text }) => {
  if (code === 'blood-pressure-not-measured') return 'Kein aktueller Ruheblutdruck gemessen.';
  const pressure = /(\d+\/\d+) mmHg/.exec(text)?.[1];
  if (from === 'blood-pressure' && pressure) return `Ruheblutdruck ${pressure} mmHg, über der Grenze.`;
  const item = screeningItem(from);
  if (!item) return causes[from] ?? text;
  const label = term(item.clinicianLabel);
  return code.startsWith('not-asked-') ? `Noch nicht gefragt: ${label}.` : `${label}.`;
};

export const phrases: ColleaguePhrases = {
  day,
  figure,
  title,
  unit: ({ drawn: { unit } }) => units[unit] ?? unit,
  reading: ({ kind }, text) => (readings[kind] ?? withComma)(text),
  change,
  limit,
  reason,
  remark,
  term,
  ...decided,
  ...health,
};
