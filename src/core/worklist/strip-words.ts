/** The four weeks of a patient in figures and words. */
import { dayInWords, jointInWords } from '../review/plain-words.ts';
import { addDays, type Day } from '../time/day.ts';
import { overUsual, type Strip, type StripUsual } from './strip.ts';

const usualInWords = ({ usual, usualTop }: Pick<StripUsual, 'usual' | 'usualTop'>): string => {
  if (usual === null) return 'usual not set';
  return usualTop === null || usualTop === usual ? `usual ${usual}` : `usual ${usual} to ${usualTop}`;
};

const morningWords = (day: Day, today: Day): string => {
  if (day === today) return 'this morning';
  return day === addDays(today, -1) ? 'yesterday morning' : `on ${dayInWords(day, today)}`;
};

/** "6/10 this morning, usual 2": the newest answer there is, and no word on those that did not come. */
export const figuresOf = (strip: Strip, today: Day): string | null => {
  const given = strip.days.findLast(({ pain }) => pain !== null);
  if (!given) return null;
  return `${given.pain}/10 ${morningWords(given.day, today)}, ${usualInWords(strip)}`;
};

const share = (value: number): string => `${Math.round(value * 100)} %`;

const doseInWords = ({ days }: Strip, today: Day): string => {
  const steps = days.filter(({ share: now }, place) => now !== null && now !== days[place - 1]?.share);
  const said = steps.map(({ day, share: now }) => `${share(now!)} from ${dayInWords(day, today)}`);
  return said.length === 0 ? 'no dose in force that can be compared' : `of the first dose ${said.join(', ')}`;
};

/** What the picture shows, for who does not see it. */
export const stripInWords = (strip: Strip, today: Day): string => {
  const given = strip.days.flatMap(({ pain }) => pain ?? []);
  const missing = strip.days.filter(({ isMissing }) => isMissing).length;
  const over = given.filter((pain) => (overUsual(pain, strip) ?? 0) > 0).length;
  const answers =
    given.length === 0
      ? 'no morning answered'
      : `${given.length} mornings answered, pain ${Math.min(...given)} to ${Math.max(...given)}, ${
          strip.usual === null ? 'usual not set' : `${over} over the usual`
        }`;
  const where = strip.joint ? `${jointInWords(strip.joint)}: ` : '';
  return `28 days, ${where}${doseInWords(strip, today)}; ${answers}; ${missing} without an answer.`;
};
