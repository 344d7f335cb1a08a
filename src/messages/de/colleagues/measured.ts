/** What was measured, in German: its title, its readings and what may be said of a change. */
import type { ErrorGroup } from '#core/assessment/change/error-group.ts';
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import type { SideLine } from '#core/assessment/course/side-to-side.ts';
import { exercises as catalogue } from '#core/exercises/catalogue.ts';
import { type Movement, movementsOf } from '#core/exercises/movements.ts';
import { exerciseName } from '../../exercises.ts';
import type { ColleaguePhrases } from '../../papers/colleague-phrases.ts';
import { forms } from '../forms.ts';
import { trade } from './trade.ts';

export const figure = (value: number): string =>
  String(Math.round(value * 10) / 10)
    .replace('.', ',')
    .replace('-', '−');

export const movementWords: Readonly<Record<Movement, string>> = {
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

const sideWords: Readonly<Record<string, string>> = { left: 'links', right: 'rechts', both: 'beidseits' };
const limbWords: Readonly<Record<string, string>> = { arm: 'Arm', leg: 'Bein' };

const subjectWords: Readonly<Record<string, string>> = {
  'held by hand': 'von Hand gehalten',
  'against a belt': 'gegen einen Gurt',
  tip: 'Spitzgriff',
  key: 'Schlüsselgriff',
  pain: 'Schmerz',
  function: 'Funktion',
  'DAS28 with ESR': 'DAS28 mit BSG',
  'DAS28 with CRP': 'DAS28 mit CRP',
};

const partOf = (part: string): string => {
  const limb = /^(left|right) (arm|leg)$/.exec(part);
  if (limb) return `${limbWords[limb[2]!]} ${sideWords[limb[1]!]}`;
  const moved = /^(active|passive) (.+)$/.exec(part);
  if (moved) {
    const movement = movementWords[moved[2]!.replaceAll(' ', '-') as Movement] ?? moved[2]!;
    return `${movement} ${moved[1] === 'active' ? 'aktiv' : 'passiv'}`;
  }
  const steps = /^(\d+) steps$/.exec(part);
  if (steps) return `${steps[1]} Stufen`;
  const joint = /^(left|right) ([a-z]+|thumb base|finger joint)$/.test(part)
    ? part.replaceAll(' ', '-')
    : null;
  if (part in movementsOf) return (forms.joint?.(`left-${part}`, 'label') ?? part).replace(/ links$/, '');
  return joint
    ? (forms.joint?.(joint, 'label') ?? part)
    : (sideWords[part] ?? limbWords[part] ?? subjectWords[part] ?? part);
};

/** An exercise has commas in its name, so it is looked for whole. */
const subjectIn = (subject: string): string => {
  const [, name = subject, side] = /^(.+), (left|right|both)$/.exec(subject) ?? [];
  const exercise = catalogue.find((one) => one.title === name);
  if (!exercise) return subject.split(', ').map(partOf).join(', ');
  return [exerciseName(exercise.id).de, ...(side ? [sideWords[side]] : [])].join(', ');
};

export const title: ColleaguePhrases['title'] = (line) => {
  const whole = trade[line.title];
  if (whole) return whole;
  const [, name = line.title, rest = ''] = /^([^:,]+)[:,] (.*)$/.exec(line.title) ?? [];
  return `${trade[name] ?? name}${rest ? `: ${subjectIn(rest)}` : ''}`;
};

const unitWords: Readonly<Record<string, string>> = { stands: 'Mal', points: 'Punkte' };

const gradeWords: Readonly<Record<string, string>> = { zero: 'keiner', trace: 'Spur' };
const bandWords: Readonly<Record<string, string>> = {
  remission: 'Remission',
  low: 'niedrig',
  moderate: 'mittel',
  high: 'hoch',
};

const withComma = (text: string): string => text.replace(/(\d)\.(\d)/g, '$1,$2');

const withBand = (text: string): string =>
  withComma(text).replace(/[a-z]+$/, (band) => bandWords[band] ?? band);

const readings: Readonly<Record<string, (text: string) => string>> = {
  'patient-chosen-activity': (text) => text.replaceAll('(answered at home)', '(zu Hause beantwortet)'),
  'chair-stand-30s': (text) => text.replace('stands', 'Mal'),
  'repetitions-to-failure': (text) =>
    withComma(text.replace('repetitions with', 'Wiederholungen mit').replace(' to ', ' bis ')),
  'joint-counts': (text) => (text === 'not worked out' ? 'nicht berechnet' : withBand(text)),
  'disease-activity-score': (text) => withBand(text),
  'stair-climb': (text) => withComma(text.replace('steps', 'Stufen')),
  'knee-hip-score': (text) => withComma(text.replace(' of ', ' von ')),
  'pain-function-global': (text) =>
    text
      .replace('pain', 'Schmerz')
      .replace('difficulty not asked', 'Alltag nicht gefragt')
      .replace('difficulty', 'Alltag')
      .replace('overall', 'insgesamt'),
  effusion: (text) => gradeWords[text] ?? text,
};

export const unit: ColleaguePhrases['unit'] = ({ drawn: { unit: name } }) => unitWords[name] ?? name;

export const reading: ColleaguePhrases['reading'] = ({ kind }, text) => (readings[kind] ?? withComma)(text);

const verdicts: Readonly<Record<OutcomeLine['change']['verdict'], string>> = {
  better: 'über den Messfehler hinaus, besser',
  worse: 'über den Messfehler hinaus, schlechter',
  'within-error': 'innerhalb des Messfehlers, keine Veränderung genannt',
  'not-judged': 'nicht beurteilt',
};

const sideVerdicts: Readonly<Record<SideLine['verdict'], string>> = {
  differ: 'Die Seiten unterscheiden sich.',
  'within-error': 'Innerhalb des Fehlers, kein Unterschied genannt.',
  'not-judged': 'Der Unterschied ist nicht beurteilt.',
};

export const sideDifference: ColleaguePhrases['sideDifference'] = ({ verdict }) => sideVerdicts[verdict];

const groupWords: Readonly<Record<ErrorGroup, string>> = {
  'knee-osteoarthritis-mild': 'bei früher Kniearthrose, radiologisch Grad 1 bis 3',
  'knee-arthroplasty-awaited': 'vor einer Knieendoprothese',
  'hip-arthroplasty-awaited': 'vor einer Hüftendoprothese',
  'none-of-these': 'keine dieser Gruppen',
};

export const change = ({ drawn, change: { verdict, errorGroup }, readings: all }: OutcomeLine): string => {
  if (all.length < 2) return 'Einmal gemessen; für eine Veränderung braucht es eine zweite Messung.';
  const error =
    drawn.error === null || drawn.grades
      ? ''
      : ` (Messfehler ${[figure(drawn.error), errorGroup ? groupWords[errorGroup] : ''].filter(Boolean).join(' ')})`;
  return `Veränderung: ${verdicts[verdict]}${error}.`;
};
