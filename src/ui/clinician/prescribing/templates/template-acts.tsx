'use client';
/** What may be done with a template: another name, withdrawing it, offering it again. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/prescribing/templates.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { SentFrame } from '../../forms/form-frame.tsx';
import { bringBackTemplate, renameTemplate, withdrawTemplate } from '../../forms/sent/templates.ts';

interface ActProps {
  readonly templateId: string;
}

export const OfferedActs = ({ templateId, name }: ActProps & { readonly name: string }) => {
  const router = useRouter();
  const shared = { about: { templateId }, onTaken: router.refresh };
  return (
    <div className="folded screen-only">
      <Disclosure summary={say('rename')}>
        <SentFrame {...shared} sent={renameTemplate} start={{ name }} label={say('rename')} tone="plain" />
      </Disclosure>
      <Disclosure summary={say('withdraw.summary')}>
        <p>{say('withdraw.about')}</p>
        <SentFrame {...shared} sent={withdrawTemplate} label={say('withdraw')} tone="plain" />
      </Disclosure>
    </div>
  );
};

export const WithdrawnActs = ({ templateId }: ActProps) => {
  const router = useRouter();
  return (
    <div className="screen-only">
      <SentFrame
        sent={bringBackTemplate}
        about={{ templateId }}
        label={say('bring-back')}
        tone="plain"
        onTaken={router.refresh}
      />
    </div>
  );
};
