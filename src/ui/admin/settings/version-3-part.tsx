'use client';
/** The choices called version 3, filled in together: what they do, and that they were tried on invented people alone. */
import { version3 } from '#core/decision/version-3-settings.ts';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';

interface Version3PartProps {
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
        {say('version-3.title')} {isFilled ? say('version-3.filled-in') : say('version-3.not-filled-in')}
      </p>
      <ul>
        <li>{say('version-3.swap')}</li>
        <li>{say('version-3.step')}</li>
        <li>{say('version-3.twice')}</li>
        <li>{say('version-3.flare')}</li>
        <li>{say('version-3.cut')}</li>
      </ul>
      <p>{say('version-3.invented')}</p>
      <Button tone="plain" onClick={() => onFill(isFilled ? asText(asDelivered) : wanted)}>
        {isFilled ? say('version-3.take-back') : say('version-3.fill-in')}
      </Button>
    </div>
  );
};
