/** Monitoring hours as a patient reads them: "Monday to Friday, 8:30 to 18:30". */
import {
  type HoursOfDays,
  type MonitoringHours,
  type Weekday,
  weekdays,
} from '#core/episode/monitoring-hours.ts';
import { everyLanguage, textOf } from './every-language.ts';
import { listed } from './formats.ts';
import { joined, type Text, textBy } from './text.ts';

/** Neighbouring days together: Mon, Tue, Wed, Sat → [Mon, Tue, Wed] and [Sat]. */
const runsOf = (days: readonly Weekday[]): readonly (readonly Weekday[])[] => {
  const places = days.map((day) => weekdays.indexOf(day));
  const starts = [...days.keys()].filter((at) => at === 0 || places[at] !== places[at - 1]! + 1);
  return starts.map((start, run) => days.slice(start, starts[run + 1]));
};

/** Three or more in a row as a span; fewer each by its name. */
const runText = (days: readonly Weekday[]): readonly Text[] => {
  const names = days.map((day) => textOf('hours', day));
  return days.length < 3 ? names : [textOf('hours', 'span', { first: names[0]!, last: names.at(-1)! })];
};

const daysText = (days: readonly Weekday[]): Text => {
  const parts = runsOf(days).flatMap(runText);
  return textBy((tag) =>
    listed(
      parts.map((part) => part[tag]),
      everyLanguage[tag].locale,
    ),
  );
};

/** "08:30" → "8:30". */
const timeText = (time: string): string => time.replace(/^0/, '');

const partText = ({ days, from, to }: HoursOfDays): Text =>
  textOf('hours', 'hours', {
    days: daysText(days),
    from: timeText(from),
    to: timeText(to),
  });

/** Empty where the clinic has no fixed hours. */
export const hoursText = (hours: MonitoringHours): Text => joined(hours.map(partText), '; ');
