'use client';
/** One form of a protocol, by its name. */
import { useRouter } from 'next/navigation';
import { SentFrame } from '../forms/form-frame.tsx';
import { beginProtocol, confirmPhase, endProtocol, writePhase } from '../forms/sent/protocol.ts';
import type { Typed } from '../forms/typed.ts';

const protocolForms = { beginProtocol, confirmPhase, endProtocol, writePhase } as const;

interface ProtocolFormProps {
  readonly name: keyof typeof protocolForms;
  readonly about: Readonly<Record<string, string>>;
  readonly label: string;
  readonly start?: Typed;
}

export const ProtocolForm = ({ name, about, label, start = {} }: ProtocolFormProps) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={protocolForms[name]}
      about={about}
      start={start}
      label={label}
      onTaken={() => router.refresh()}
    />
  );
};
