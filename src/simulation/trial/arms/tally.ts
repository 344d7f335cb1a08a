/** What an arm did since it was last asked, counted up. */
import { type Acts, noActs } from '../arm.ts';

type Counted = { -readonly [Name in keyof Acts]: Acts[Name] };

export interface Tally {
  readonly add: (name: Exclude<keyof Acts, 'talkedAboutOverdoing'>, count?: number) => void;
  readonly talkAboutOverdoing: () => void;
  /** Hands the counts over and begins anew. */
  readonly take: () => Acts;
}

export const tally = (): Tally => {
  let acts: Counted = { ...noActs };
  return {
    add: (name, count = 1) => {
      acts[name] += count;
    },
    talkAboutOverdoing: () => {
      acts.talkedAboutOverdoing = true;
    },
    take: () => {
      const taken = acts;
      acts = { ...noActs };
      return taken;
    },
  };
};
