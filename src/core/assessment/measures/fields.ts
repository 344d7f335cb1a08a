/** Fields that several measures share, and short ways to write one. */
import { limbs, sides } from '#core/exercises/joints.ts';
import { positions } from '#core/prescribing/dose.ts';

export const limb = { name: 'limb', kind: 'enum', values: limbs } as const;
export const side = { name: 'side', kind: 'enum', values: sides } as const;
export const position = { name: 'position', kind: 'enum', values: positions } as const;

export const number = <const N extends string>(
  name: N,
  unit: string,
  min: number,
  max: number,
  about: string,
) => ({ name, kind: 'number', unit, min, max, about }) as const;

export const whole = <const N extends string>(
  name: N,
  unit: string,
  min: number,
  max: number,
  about: string,
) => ({ name, kind: 'integer', unit, min, max, about }) as const;

export const word = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength: 60, about }) as const;

export const usually = (name: string, low: number, high: number, unit: string) => ({ name, low, high, unit });
