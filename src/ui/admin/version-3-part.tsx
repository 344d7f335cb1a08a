'use client';
/** The choices called version 3, filled in together: what they do, and that they were tried on invented people alone. */
import { version3 } from '#core/decision/version-3-settings.ts';
import { say } from '#messages/en/staff/version-3.ts';
import { Button } from '#ui/design-system/button.tsx';

export interface Version3PartProps {
  /** As typed, by the id of the setting. */
  readonly typed: Readonly<Record<string, string>>;
  readonly delivered: Readonly<Record<string, number>>;
  readonly onFill: (values: Readonly<Record<string, string>>) => void;
}

const asText = (values: Readonly<Record<string, number>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(values).map(([id, value]) => [id, String(value)]));

export const Version3Part = ({ typed, delivered, onFill }: Version3PartProps) => {
  const wanted = asText(version3);
  const ids = Object.keys(version3);
  const isFilled = ids.every((id) => typed[id] === wanted[id]);
  const asDelivered = Object.fromEntries(
    ids.flatMap((id) => (id in delivered ? [[id, delivered[id]!]] : [])),
  );
  return (
    <div className="stack-close">
      <p>
        {say('title')} {isFilled ? say('filled-in') : say('not-filled-in')}
      </p>
      <ul>
        <li>{say('swap')}</li>
        <li>{say('step')}</li>
        <li>{say('twice')}</li>
        <li>{say('flare')}</li>
        <li>{say('cut')}</li>
      </ul>
      <p>{say('invented')}</p>
      <Button tone="plain" onClick={() => onFill(isFilled ? asText(asDelivered) : wanted)}>
        {isFilled ? say('take-back') : say('fill-in')}
      </Button>
    </div>
  );
};
