/** How German writes joints, limbs and days inside a sentence: gender, case and what agrees with them. */
import type { JointName, Limb } from '#core/exercises/joints.ts';
import type { Grammar } from '../translate.ts';

type Gender = 'm' | 'f' | 'n';
type Noun = readonly [noun: string, gender: Gender];

const joints: Readonly<Record<JointName, Noun>> = {
  shoulder: ['Schulter', 'f'],
  elbow: ['Ellbogen', 'm'],
  wrist: ['Handgelenk', 'n'],
  hand: ['Hand', 'f'],
  'thumb-base': ['Daumensattelgelenk', 'n'],
  'finger-joint': ['Fingergelenk', 'n'],
  hip: ['Hüfte', 'f'],
  knee: ['Knie', 'n'],
  ankle: ['Sprunggelenk', 'n'],
  foot: ['Fuß', 'm'],
  neck: ['Nacken', 'm'],
  'low-back': ['Rücken', 'm'],
};

const limbs: Readonly<Record<Limb, Noun>> = { arm: ['Arm', 'm'], leg: ['Bein', 'n'] };

const adjectives: Readonly<Record<string, string>> = { left: 'link', right: 'recht', low: 'unter' };

/** What stands before the noun in a form, and the ending of the adjective between them. */
interface Declension {
  readonly word: Readonly<Record<Gender, string>>;
  readonly ending: Readonly<Record<Gender, string>>;
}

const strong = { m: 'er', f: 'e', n: 'es' } as const;
const dative = { m: 'en', f: 'en', n: 'en' } as const;

const declensions: Readonly<Record<string, Declension>> = {
  '': { word: { m: '', f: '', n: '' }, ending: strong },
  your: { word: { m: 'Ihr', f: 'Ihre', n: 'Ihr' }, ending: strong },
  'your-accusative': { word: { m: 'Ihren', f: 'Ihre', n: 'Ihr' }, ending: { m: 'en', f: 'e', n: 'es' } },
  'your-dative': { word: { m: 'Ihrem', f: 'Ihrer', n: 'Ihrem' }, ending: dative },
  in: { word: { m: 'im', f: 'in der', n: 'im' }, ending: dative },
  on: { word: { m: 'am', f: 'an der', n: 'am' }, ending: dative },
};

const sideWords: Readonly<Record<string, string>> = { left: 'links', right: 'rechts' };

/** "left-knee" → side "left" and "knee"; "low-back" → "low" and "low-back". */
const partsOf = (value: string): readonly [side: string, name: string] => {
  const [, side, name] = /^(left|right)-(.+)$/.exec(value) ?? [];
  return side && name ? [side, name] : [value === 'low-back' ? 'low' : '', value];
};

/**
 * "left-knee" plain: "linkes Knie"; your: "Ihr linkes Knie"; your-accusative: "Ihren linken Ellbogen";
 * your-dative: "Ihrer rechten Hüfte"; in: "im linken Knie"; on: "am linken Knie"; label: "Knie links".
 */
const formed =
  (nouns: Readonly<Record<string, Noun>>) =>
  (value: string, form: string): string => {
    const [side, name] = partsOf(value);
    const [noun, gender] = nouns[name] ?? [name, 'n'];
    if (form === 'label' && sideWords[side]) return `${noun} ${sideWords[side]}`;
    const { word, ending } = declensions[form] ?? declensions['']!;
    const adjective = side === '' ? '' : `${adjectives[side]}${ending[gender]}`;
    return [word[gender], adjective, noun].filter((part) => part !== '').join(' ');
  };

const months = [
  'Januar',
  'Februar',
  'März',
  'April',
  'Mai',
  'Juni',
  'Juli',
  'August',
  'September',
  'Oktober',
  'November',
  'Dezember',
] as const;

/** "2026-02-03" → "3. Februar 2026". */
const day = (value: string): string => {
  const [year, month, date] = value.split('-').map(Number);
  return `${date}. ${months[(month ?? 1) - 1]} ${year}`;
};

export const forms: Grammar['forms'] = { joint: formed(joints), limb: formed(limbs), day };
