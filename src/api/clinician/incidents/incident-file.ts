/** The clinic's incidents as a file: a row for each entry ever written, those that another stands in the place of too. */
import type { IncidentChange } from '#core/clinic/incident.ts';
import { dateTimeParts } from '#core/time/date-time.ts';
import { say } from '#messages/en/staff/administration/incidents.ts';
import type { AboutWhom, ToldEntry, ToldIncident } from './about-whom.ts';
import { csvOf } from './csv.ts';

const columns = [
  say('column.incident'),
  say('column.version'),
  say('column.counts'),
  say('column.day'),
  say('column.time'),
  say('column.kind'),
  say('column.about'),
  say('column.happened'),
  say('column.done-at-once'),
  say('column.would-prevent'),
  say('column.told'),
  say('column.written-at'),
  say('column.written-by'),
  say('column.state'),
  say('column.changes'),
];

/** One for all programs that read the file. */
const instantIn = (instant: number): string => new Date(instant).toISOString();

const whomIn = (about: AboutWhom): string => (about.is === 'named' ? about.name : say(`about.${about.is}`));

const changeIn = ({ state, reason, at, by }: IncidentChange): string =>
  say('column.change', { state: say(`state.${state}`), at: instantIn(at), by, reason });

const rowOf = (incident: ToldIncident, entry: ToldEntry): readonly string[] => {
  const { day, time } = dateTimeParts(entry.when)!;
  const counts = entry.version === incident.entry.version;
  return [
    incident.id,
    String(entry.version),
    say(counts ? 'column.counts.yes' : 'column.counts.no'),
    day,
    time ?? '',
    say(`kind.${entry.kind}`),
    whomIn(entry.about),
    entry.happened,
    entry.doneAtOnce ?? '',
    entry.wouldPrevent ?? '',
    entry.told ?? '',
    instantIn(entry.writtenAt),
    entry.writtenBy,
    say(incident.isOpen ? 'state.open' : 'state.closed'),
    incident.changes.map(changeIn).join('\n'),
  ];
};

export const incidentFile = (incidents: readonly ToldIncident[]): string =>
  csvOf([
    columns,
    ...incidents.flatMap((incident) =>
      [...incident.earlier, incident.entry].map((entry) => rowOf(incident, entry)),
    ),
  ]);
