/** The rules of the engine. */
import { sayIn } from '../../say.ts';

export const words = {
  'setting.default': '(default); from {min} to {max}.',
  'setting.own': '(set by this clinic); from {min} to {max}.',
  'overridden-never': 'Never overridden here.',
  'overridden-once': 'Overridden once here.',
  overridden: 'Overridden {count} times here.',
  when: 'When {threshold}: {effect}.',
  'own-setting-sourced': 'Uses a clinic setting; related source:',
  'own-setting': 'Uses a clinic setting, no source.',
  lead: '{count} rules, version {version}. Each rule that applies limits the decision; the most cautious one counts. No rule makes a decision bolder, and a missing answer never lets a dose go up.',
} as const;

export const say = sayIn(words);
