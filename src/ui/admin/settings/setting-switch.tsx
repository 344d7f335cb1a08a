/** Yes or no: on or off as a shape and a word, with the name of the setting for those who hear it. */
import { say } from '#messages/en/staff/administration/settings.ts';

interface SettingSwitchProps {
  readonly id: string;
  readonly isOn: boolean;
  /** Id of the text that names it. */
  readonly labelledBy: string;
  readonly describedBy: string;
  readonly onSwitch: () => void;
}

export const SettingSwitch = ({ id, isOn, labelledBy, describedBy, onSwitch }: SettingSwitchProps) => (
  <button
    type="button"
    role="switch"
    id={id}
    className="switch"
    aria-checked={isOn}
    aria-labelledby={labelledBy}
    aria-describedby={describedBy}
    onClick={onSwitch}
  >
    <span className="switch-track" aria-hidden="true" />
    <span aria-hidden="true">{say(isOn ? 'on' : 'off')}</span>
  </button>
);
