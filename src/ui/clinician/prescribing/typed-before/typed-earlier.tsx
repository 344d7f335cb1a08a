/** That figures are shown as they were typed on an earlier visit of the page, and the way back from them. */
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { Button } from '#ui/design-system/button.tsx';
import type { DraftState } from '../../forms/use-draft.ts';

export const TypedEarlier = (props: {
  readonly isRestored: boolean;
  readonly draft: DraftState;
  readonly onAnew: () => void;
}) => (
  <>
    {props.isRestored ? (
      <p className="row small">
        <span>{say('typed-earlier')}</span>
        <Button tone="plain" onClick={props.onAnew}>
          {say('typed-anew')}
        </Button>
      </p>
    ) : null}
    {props.draft === 'not-saved' ? (
      <p role="status" className="small">
        {say('typed-not-kept')}
      </p>
    ) : null}
  </>
);
