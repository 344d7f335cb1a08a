/** What the core says to colleagues, in German. What people typed stays as typed. */
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import { screeningItem } from '#core/screening/items.ts';
import type { Day } from '#core/time/day.ts';
import type { ColleaguePhrases } from '../../papers/colleague-phrases.ts';
import { forms } from '../forms.ts';
import { decided } from './decided.ts';
import { health } from './health.ts';
import { words } from './letter.ts';
import { change, figure, movementWords, reading, sideDifference, title, unit } from './measured.ts';
import { trade } from './trade.ts';

/** "2026-02-03" → "03.02.2026", as practices write it. */
const day = (value: Day): string => value.split('-').toReversed().join('.');

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

const limitWords: Readonly<Record<LimitInForce['kind'], string>> = {
  'weight-bearing': 'Belastung begrenzt',
  range: 'Bewegungsumfang begrenzt',
  'load-limit': 'Last begrenzt',
  'no-impact': 'keine Stoßbelastung',
  methods: 'nicht jede Methode',
  none: 'keine Grenze',
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
  unit,
  reading,
  change,
  sideDifference,
  limit,
  reason,
  remark,
  term,
  ...decided,
  ...health,
};
