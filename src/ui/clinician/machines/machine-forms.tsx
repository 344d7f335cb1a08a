'use client';
/** Adding a machine, and correcting one. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/administration/machines.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { MachineAnswer } from '../answers.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { addMachine, correctMachine } from '../forms/sent/machines.ts';
import type { Typed } from '../forms/typed.ts';

const hints = { place: say('hint.place'), firstKg: say('hint.first'), hasHalfStep: say('hint.half') };

export const AddMachine = () => {
  const router = useRouter();
  return (
    <SentFrame
      sent={addMachine}
      about={{}}
      label={say('save')}
      hints={hints}
      clearsTo={{}}
      onTaken={router.refresh}
    />
  );
};

const typedOf = ({
  name,
  kind,
  loading,
  place,
  firstKg,
  stepKg,
  lastKg,
  hasHalfStep,
}: MachineAnswer): Typed => ({
  ...{ name, kind, loading, place },
  firstKg: String(firstKg),
  stepKg: String(stepKg),
  lastKg: String(lastKg),
  hasHalfStep: hasHalfStep ? 'yes' : 'no',
});

export const CorrectMachine = ({ machine }: { readonly machine: MachineAnswer }) => {
  const router = useRouter();
  return (
    <Disclosure summary={say('correct', { name: machine.name })}>
      <p className="soft small">{say('correct.note')}</p>
      <SentFrame
        key={machine.version}
        sent={correctMachine}
        about={{ machineId: machine.id, seen: String(machine.version) }}
        start={typedOf(machine)}
        label={say('correct.save')}
        hints={hints}
        tone="plain"
        onTaken={router.refresh}
      />
    </Disclosure>
  );
};
