'use client';
/** After the signature: the days of the week, and the invitation for the phone. Both are the parts used elsewhere. */
import { useState } from 'react';
import { say } from '#messages/en/staff/first-visit.ts';
import { LinkButton } from '#ui/design-system/button.tsx';
import { InvitationPanel, type InvitationPanelProps } from '../access/invitation-panel.tsx';
import { PlannerForm, type PlannerFormProps } from '../programme/planner-form.tsx';
import { Back, StepHeading, useGoOn } from './step-frame.tsx';

export const WeekStep = (props: PlannerFormProps) => {
  const goOn = useGoOn(props.patientId, 'week');
  return (
    <div className="stack visit-week">
      <StepHeading step="week" />
      {props.exercises.length === 0 ? (
        <p>{say('nothing-signed')}</p>
      ) : (
        <PlannerForm {...props} isBegun onSaved={goOn} />
      )}
      <p>
        <Back patientId={props.patientId} step="week" />
      </p>
    </div>
  );
};

export const InvitationStep = (
  props: InvitationPanelProps & { readonly isMonitored: boolean; readonly isLetIn: boolean },
) => {
  // Of what stood when the page was opened: the one made here is shown itself.
  const [wasLetIn] = useState(props.isLetIn);
  return (
    <div className="stack">
      <StepHeading step="invitation" />
      {props.isMonitored ? null : <p>{say('not-monitored')}</p>}
      {wasLetIn ? <p>{say('let-in-already')}</p> : null}
      <InvitationPanel {...props} />
      <p className="row screen-only">
        <LinkButton tone="plain" href={`/patients/${props.patientId}`}>
          {say('to-summary')}
        </LinkButton>
        <Back patientId={props.patientId} step="invitation" />
      </p>
    </div>
  );
};
