/** Protocols of a person: the phase that holds, the one to confirm, what each allows, and how it came. */
import { methodsWithout } from '#core/episode/protocol/protocol.ts';
import { arcInWords } from '#core/exercises/movements.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode/protocol.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { ProtocolAnswer } from '../answers.ts';
import { optionInWords } from '../forms/field-words.ts';
import { typedFrom } from '../forms/typed.ts';
import { ProtocolForm } from './protocol-form.tsx';

interface ProtocolProps {
  readonly patientId: string;
  readonly protocols: readonly ProtocolAnswer[];
  readonly day: Day;
}

interface OneProps extends Omit<ProtocolProps, 'protocols'> {
  readonly protocol: ProtocolAnswer;
}

type Phase = ProtocolAnswer['phases'][number];

const bearingOf = ({ weightBearing, bearKg }: Phase): string =>
  [optionInWords(weightBearing), ...(bearKg ? [say('bears-kg', { load: bearKg })] : [])].join(' ');

const rangeOf = ({ movement, fromDegrees, toDegrees }: Phase): string =>
  movement === null || fromDegrees === null || toDegrees === null
    ? say('free')
    : arcInWords({ movement, fromDegrees, toDegrees });

const withoutOf = (phase: Phase): string => methodsWithout(phase).map(optionInWords).join(', ');

const standing = ({ inForce, due }: ProtocolAnswer, place: number): string => {
  if (place === inForce) return ` (${say('holds')})`;
  return place === due ? ` (${say('due')})` : '';
};

const Phases = ({ protocol, day }: OneProps) => (
  <DataTable
    caption={say('phases')}
    columns={[
      { key: 'phase', title: say('phase') },
      { key: 'from', title: say('not-before') },
      { key: 'bearing', title: say('bearing') },
      { key: 'range', title: say('range') },
      { key: 'load', title: say('load-most') },
      { key: 'without', title: say('without-method') },
    ]}
    rows={protocol.phases.map((phase) => ({
      key: String(phase.place),
      cells: [
        `${phase.place}. ${phase.name}${standing(protocol, phase.place)}`,
        dayInWords(phase.from, day),
        bearingOf(phase),
        rangeOf(phase),
        phase.limitKg === null ? say('free') : say('kg', { load: phase.limitKg }),
        withoutOf(phase),
      ],
    }))}
    empty={say('no-phase')}
  />
);

const Confirm = ({ protocol, patientId, day }: OneProps) => {
  const phase = protocol.phases.find(({ place }) => place === protocol.due);
  if (!phase) return null;
  const { place, name, from, recordedAt } = phase;
  return (
    <section className="stack-close screen-only">
      <h3>{say('confirm-title', { place, name, date: dayInWords(from, day) })}</h3>
      <ProtocolForm
        name="confirmPhase"
        about={{ patientId, protocolId: protocol.id, place: String(place), seen: String(recordedAt) }}
        label={say('confirm', { place })}
      />
    </section>
  );
};

const usualPhase = { lowLoad: 'yes', variation: 'yes', occlusion: 'no' } as const;

const Change = ({ protocol, patientId }: OneProps) => {
  const { phases, inForce, id: protocolId } = protocol;
  const next = phases.length + 1;
  const aboutOf = (place: number) => {
    const seen = phases.find((phase) => phase.place === place)?.recordedAt ?? '';
    return {
      patientId,
      protocolId,
      place: String(place),
      seen: String(seen),
      holds: place === inForce ? 'yes' : '',
    };
  };
  return (
    <div className="stack-close screen-only">
      <Disclosure summary={say('write', { place: next })}>
        <ProtocolForm
          name="writePhase"
          about={aboutOf(next)}
          label={say('write', { place: next })}
          start={usualPhase}
        />
      </Disclosure>
      {phases.map((phase) => (
        <Disclosure key={phase.place} summary={say('write-anew', phase)}>
          <ProtocolForm
            name="writePhase"
            about={aboutOf(phase.place)}
            label={say('write', phase)}
            start={typedFrom({ ...phase })}
          />
        </Disclosure>
      ))}
      {phases
        .filter(({ place }) => inForce !== null && place < inForce)
        .map(({ place }) => (
          <Disclosure key={place} summary={say('go-back', { place })}>
            <ProtocolForm name="confirmPhase" about={aboutOf(place)} label={say('go-back', { place })} />
          </Disclosure>
        ))}
      <Disclosure summary={say('end-title')}>
        <p className="soft">{say('end-hint')}</p>
        <ProtocolForm name="endProtocol" about={{ patientId, protocolId }} label={say('end')} />
      </Disclosure>
    </div>
  );
};

const History = ({ protocol, day }: OneProps) =>
  protocol.steps.length === 0 ? null : (
    <Disclosure summary={say('history')}>
      <ul>
        {protocol.steps.map(({ place, on, at, by, seen }) => (
          <li key={at}>
            {say(place === 0 ? 'history.end' : 'history.step', {
              date: dayInWords(on, day),
              place,
              name: by,
              seen,
            })}
          </li>
        ))}
      </ul>
      {protocol.rewritten > 0 ? <p>{say('rewritten', { count: protocol.rewritten })}</p> : null}
    </Disclosure>
  );

const stateOf = ({ hasEnded, inForce }: ProtocolAnswer): string => {
  if (hasEnded) return say('state.ended');
  return inForce === null ? say('state.none') : say('state.phase', { place: inForce });
};

const One = (props: OneProps) => {
  const { protocol, day } = props;
  return (
    <section className="stack-close">
      <h2>{say('head', { procedure: protocol.procedure, 'joint-name': jointInWords(protocol.joint) })}</h2>
      <p className="soft small">
        <StatusTag shape={protocol.hasEnded ? 'done' : 'waiting'} tone={protocol.due ? 'care' : 'plain'}>
          {stateOf(protocol)}
        </StatusTag>{' '}
        {say('set', { date: dayInWords(protocol.on, day), name: protocol.author })}
      </p>
      {protocol.letter ? (
        <Disclosure summary={say('letter')}>
          <p className="typed-text">{protocol.letter}</p>
        </Disclosure>
      ) : (
        <p className="soft small">{say('no-letter')}</p>
      )}
      <Confirm {...props} />
      <Phases {...props} />
      {protocol.hasEnded ? null : <Change {...props} />}
      <History {...props} />
    </section>
  );
};

export const ProtocolScreen = ({ protocols, ...props }: ProtocolProps) => (
  <div className="stack-wide">
    <p className="soft">{say(protocols.length === 0 ? 'none' : 'about')}</p>
    {protocols.map((protocol) => (
      <One key={protocol.id} protocol={protocol} {...props} />
    ))}
    <section className="stack-close screen-only">
      <Disclosure summary={say('begin-title')}>
        <ProtocolForm name="beginProtocol" about={{ patientId: props.patientId }} label={say('begin')} />
      </Disclosure>
    </section>
  </div>
);
