/** Ease-backs directly before the session now judged, counted over sessions as the product counts them. */
import type { DecisionWord } from '#core/decision/answers.ts';
import { type EngineSettingValues, engineVersionOf } from '#core/decision/settings.ts';

export interface EaseBackRun {
  /** A session looked at again counts once, with its last word. */
  readonly note: (sessionId: string | null, word: DecisionWord, flareDays: number) => void;
  readonly before: (sessionId: string | null) => number;
}

export const easeBackRun = (settings: EngineSettingValues): EaseBackRun => {
  /** The last word on each session judged, oldest first. */
  const words = new Map<string | null, DecisionWord>();
  // Since version 2 ease-backs in a reported flare are passed over: the rules of the flare ask for a look.
  const passesOverFlares = engineVersionOf(settings) >= 2;
  return {
    note: (sessionId, word, flareDays) => {
      words.delete(sessionId);
      if (passesOverFlares && word === 'ease-back' && flareDays > 0) return;
      words.set(sessionId, word);
    },
    before: (sessionId) => {
      const before = [...words].filter(([id]) => id !== sessionId).map(([, word]) => word);
      return before.length - 1 - before.findLastIndex((word) => word !== 'ease-back');
    },
  };
};
