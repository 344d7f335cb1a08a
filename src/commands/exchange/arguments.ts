/** Arguments of a command as they are typed; what is wrong is told with how the command is used. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { CannotGoOn } from '../say.mjs';

export const textOption = { type: 'string' } as const;
export const flagOption = { type: 'boolean' } as const;

type Options = NonNullable<ParseArgsConfig['options']>;

export const argumentsOf = (usage: string) => ({
  values: <const T extends Options>(args: readonly string[], options: T) => {
    try {
      return parseArgs({ args: [...args], options }).values;
    } catch (error) {
      throw new CannotGoOn(`${error instanceof Error ? error.message : ''}\n${usage}`, 2);
    }
  },
  oneOf: <T extends string>(name: string, list: readonly T[], given: string | undefined): T => {
    const found = list.find((one) => one === given);
    if (found) return found;
    throw new CannotGoOn(`--${name} is ${list.join(' or ')}${given ? `, not "${given}"` : ''}.\n${usage}`, 2);
  },
});
