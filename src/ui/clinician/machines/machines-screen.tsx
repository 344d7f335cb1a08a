/** The clinic's machines: those in use, those that are retired, and one more. */
import { apartKg, type ClinicMachine, machineLoadsKg } from '#core/clinic/machine.ts';
import { say } from '#messages/en/staff/administration/machines.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { ActButton } from '../../account/act-button.tsx';
import type { MachineAnswer } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { AddMachine, CorrectMachine } from './machine-forms.tsx';

interface MachinesProps {
  readonly machines: readonly MachineAnswer[];
  readonly clock: ClinicClock;
}

type Entry = MachineAnswer['earlier'][number];

const aboutInWords = ({ kind, loading, place }: ClinicMachine): string =>
  say('about', { kind: say(`kind.${kind}`), loading: say(`loading.${loading}`), place });

const loadsInWords = (machine: ClinicMachine): string => {
  const loads = machineLoadsKg(machine);
  return say('loads', {
    count: loads.length,
    low: loads[0]!,
    high: loads.at(-1)!,
    apart: apartKg(machine),
  });
};

const byInWords = ({ version, isRetired, writtenBy: name, writtenAt }: Entry, clock: ClinicClock): string =>
  say(isRetired ? 'by.retired' : version === 1 ? 'by.first' : 'by.later', {
    name,
    at: momentInWords(writtenAt, clock),
  });

const EntryWords = ({ entry, clock }: { readonly entry: Entry; readonly clock: ClinicClock }) => (
  <>
    <p>{aboutInWords(entry)}</p>
    <p>{loadsInWords(entry)}</p>
    <p className="soft small">{byInWords(entry, clock)}</p>
  </>
);

const Earlier = ({ machine, clock }: { readonly machine: MachineAnswer; readonly clock: ClinicClock }) =>
  machine.earlier.length === 0 ? null : (
    <Disclosure summary={say('earlier', { count: machine.earlier.length })}>
      {machine.earlier.map((entry) => (
        <div key={entry.version} className="stack-close">
          <p>{entry.name}</p>
          <EntryWords entry={entry} clock={clock} />
        </div>
      ))}
    </Disclosure>
  );

const RetireOrNot = ({ machine }: { readonly machine: MachineAnswer }) => {
  const { id: machineId, version: seen, name, isRetired } = machine;
  return (
    <ActButton
      path={`admin.machines.${isRetired ? 'bringBack' : 'retire'}`}
      input={{ machineId, seen }}
      label={say(isRetired ? 'bring-back' : 'retire')}
      about={name}
      {...(isRetired ? {} : { question: say('retire.question', { name }) })}
    />
  );
};

const Machines = ({ isRetired, ...props }: MachinesProps & { readonly isRetired: boolean }) => {
  const machines = props.machines.filter((machine) => machine.isRetired === isRetired);
  const count = machines.length;
  if (isRetired && count === 0) return null;
  return (
    <section className="stack" aria-label={say(isRetired ? 'retired' : 'in-use', { count })}>
      <h2>{say(isRetired ? 'retired' : 'in-use', { count })}</h2>
      {count === 0 ? <p className="soft">{say('none-in-use')}</p> : null}
      <ul className="plain-list lined stack-wide">
        {machines.map((machine) => (
          <li key={machine.id} className="stack-close">
            <h3>{machine.name}</h3>
            <EntryWords entry={machine} clock={props.clock} />
            <Earlier machine={machine} clock={props.clock} />
            <CorrectMachine machine={machine} />
            <RetireOrNot machine={machine} />
          </li>
        ))}
      </ul>
    </section>
  );
};

export const MachinesScreen = (props: MachinesProps) => (
  <div className="stack-wide">
    <PageHeading>{say('title')}</PageHeading>
    <div className="stack-close">
      <p>{say('lead')}</p>
      <p className="soft small">{say('compare')}</p>
    </div>
    <Machines {...props} isRetired={false} />
    <section className="stack" aria-labelledby="machine-add">
      <h2 id="machine-add">{say('add')}</h2>
      <AddMachine />
    </section>
    <Machines {...props} isRetired />
  </div>
);
