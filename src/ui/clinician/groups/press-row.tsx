/** One question, answered by one press on a button large enough for a finger. */
import type { ReactNode } from 'react';
import { Button } from '#ui/design-system/button.tsx';

interface PressOption {
  readonly value: string;
  readonly label: ReactNode;
  /** Read out instead of a label that is only a figure. */
  readonly said?: string;
}

interface PressesProps {
  readonly options: readonly PressOption[];
  readonly chosen: string | undefined;
  readonly onPress: (value: string) => void;
}

export const Presses = ({ options, chosen, onPress }: PressesProps) => (
  <div className="presses">
    {options.map(({ value, label, said }) => (
      <Button
        key={value}
        tone={chosen === value ? 'primary' : 'plain'}
        aria-pressed={chosen === value}
        aria-label={said}
        onClick={() => onPress(value)}
      >
        {label}
      </Button>
    ))}
  </div>
);

interface PressRowProps extends PressesProps {
  readonly question: string;
  readonly hint?: ReactNode;
}

export const PressRow = ({ question, hint, ...presses }: PressRowProps) => (
  <fieldset className="press-row">
    <legend>{question}</legend>
    {hint ? <p className="soft small">{hint}</p> : null}
    <Presses {...presses} />
  </fieldset>
);
