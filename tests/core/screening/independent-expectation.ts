/** What the second table leaves of a method on a limb, worked out apart from the product. */
import { type Letter, type Row, rows, type Where } from './independent-screening-table.ts';

export interface Given {
  readonly item: string;
  readonly answer: 'yes' | 'no' | 'not-known';
  readonly limbs?: readonly { readonly limb: 'arm' | 'leg'; readonly side: 'left' | 'right' }[];
  readonly joints?: readonly string[];
  readonly details?: readonly string[];
}

export interface Expected {
  readonly letter: Letter;
  readonly because: readonly { readonly letter: Letter; readonly text: RegExp }[];
}

const order: readonly Letter[] = ['o', 'p', 'c', 'x'];
const joints = {
  arm: ['shoulder', 'elbow', 'wrist', 'hand', 'thumb-base', 'finger-joint'],
  leg: ['hip', 'knee', 'ankle', 'foot'],
} as const;

type Site = { readonly limb: 'arm' | 'leg'; readonly side: 'left' | 'right' };

const isAt = (where: Where, given: Given, site: Site): boolean => {
  if (where === 'all') return true;
  if (where === 'leg' || where === 'arm') return where === site.limb;
  if (where === 'joint') {
    const here = joints[site.limb].map((name) => `${site.side}-${name}`);
    return !given.joints || given.joints.some((joint) => here.includes(joint));
  }
  return !given.limbs || given.limbs.some((one) => one.limb === site.limb && one.side === site.side);
};

/** Nothing was said about the details: the answer is not known, or a yes names none. */
const isUnsaid = (given: Given): boolean => given.answer === 'not-known' || given.details === undefined;

const isSaid = (one: Row, given: Given): boolean =>
  (one.detail === undefined || (given.details ?? []).includes(one.detail)) &&
  (one.unless === undefined || isUnsaid(given) || !given.details!.includes(one.unless));

/** A joint nobody names counts as every joint: the work itself then waits, not only the cuff. */
const letterOf = (one: Row, given: Given, isCuff: boolean): Letter => {
  if (one.where === 'joint' && !given.joints) return 'c';
  return isCuff ? one.cuff : one.load;
};

const mostOf = (letters: readonly Letter[]): Letter =>
  order[Math.max(0, ...letters.map((letter) => order.indexOf(letter)))]!;

/** In place of details of which none was said, one reason: the most cautious, named as that. */
const unsaidOf = (given: Given, isCuff: boolean, reached: readonly Row[]): Expected['because'] =>
  isUnsaid(given)
    ? [
        {
          letter: mostOf(
            reached.filter(({ detail }) => detail !== undefined).map((one) => letterOf(one, given, isCuff)),
          ),
          text: /which of these was not said, so the most cautious counts/,
        },
      ]
    : [];

const becauseOf = (given: Given, isCuff: boolean, site: Site): Expected['because'] => {
  const reached = rows.filter((one) => one.item === given.item && isAt(one.where, given, site));
  const said = reached
    .filter((one) => (one.detail === undefined || !isUnsaid(given)) && isSaid(one, given))
    .map((one) => ({ letter: letterOf(one, given, isCuff), text: one.because }));
  return [...said, ...unsaidOf(given, isCuff, reached)];
};

export const expectedFor = (all: readonly Given[], isCuff: boolean, site: Site): Expected => {
  const because = all
    .filter((given) => given.answer !== 'no')
    .flatMap((given) => becauseOf(given, isCuff, site))
    .filter(({ letter }) => letter !== 'o');
  return { letter: mostOf(because.map(({ letter }) => letter)), because };
};
