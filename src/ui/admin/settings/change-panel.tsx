'use client';
/** Under a setting that is being changed: what it would have changed, the reason, and one button at a time. */
import type { ReactNode } from 'react';
import { say } from '#messages/en/staff/administration/settings.ts';
import { Button } from '#ui/design-system/button.tsx';
import { SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { WhatIfView } from '#ui/design-system/what-if/what-if-view.tsx';
import { Working } from '#ui/design-system/what-if/working.tsx';
import { Asked } from '../../account/asked.tsx';
import { reasonOf } from './setting.ts';
import type { SettingChanging } from './use-setting-change.ts';

export interface ChangePanelProps {
  readonly id: string;
  readonly changing: SettingChanging;
  readonly isReplayed: boolean;
  readonly reason: string;
  readonly onReason: (text: string) => void;
  readonly saveLabel: string;
  readonly keepLabel: string;
  /** Null where there is nothing to leave. */
  readonly onKeep: (() => void) | null;
  /** More beside the buttons, such as the way back to the product's value. */
  readonly children?: ReactNode;
}

const Effect = ({ changing, isReplayed }: Pick<ChangePanelProps, 'changing' | 'isReplayed'>) =>
  isReplayed ? (
    changing.job ? (
      <Working job={changing.job} />
    ) : changing.preview ? (
      <>
        <WhatIfView found={changing.preview} />
        <p className="soft small">{say('dose-note')}</p>
      </>
    ) : (
      <p className="soft">{say('preview.first')}</p>
    )
  ) : (
    <p className="soft">{say('preview.nothing-stored')}</p>
  );

/** Stands in a form whose submit looks first and then saves. */
export const ChangePanel = (props: ChangePanelProps) => {
  const { id, changing, isReplayed } = props;
  const { asking } = changing;
  const mayBeSaved = !isReplayed || changing.preview !== null;
  return (
    <div className="setting-panel stack-close">
      <Asked asking={asking} />
      <div aria-live="polite">
        <Effect changing={changing} isReplayed={isReplayed} />
      </div>
      {mayBeSaved ? (
        <TextField
          name={reasonOf(id)}
          label={say('reason')}
          hint={say('reason.hint')}
          maxLength={500}
          value={props.reason}
          error={asking.errorOf(reasonOf(id))}
          onChange={(event) => props.onReason(event.target.value)}
        />
      ) : null}
      <div className="row">
        <SendButton aria-disabled={asking.isBusy || undefined}>
          {mayBeSaved ? props.saveLabel : say('preview')}
        </SendButton>
        {props.onKeep ? (
          <Button tone="plain" onClick={props.onKeep}>
            {props.keepLabel}
          </Button>
        ) : null}
        {props.children}
      </div>
    </div>
  );
};
