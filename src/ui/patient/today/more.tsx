'use client';
/** What is opened seldom: who types, language and weights, consents, who looked, the own sign-in. Its scripts come when it is opened. */
import { useState } from 'react';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { EnteredByProps } from '../entered-by.tsx';
import { fetchedPart } from '../phone/fetched.tsx';
import { t } from '../words.ts';
import { SeldomLinks } from './visit-links.tsx';

const SeldomNeeded = fetchedPart(() => import('./seldom-needed.tsx').then((file) => file.SeldomNeeded));

/** Open from the start while somebody else types: whose answers these are is never folded away. */
export const More = ({ who, onChoose }: EnteredByProps) => {
  const [isOpened, setOpened] = useState(false);
  const isShown = isOpened || who !== null;
  // One that was opened before its script had come has told nobody.
  const wasOpen = (box: HTMLElement | null) => {
    if (box?.querySelector('details')?.open) setOpened(true);
  };
  return (
    <div ref={wasOpen}>
      <Disclosure summary={t('today.more')} isOpen={isShown} onOpen={() => setOpened(true)}>
        {isShown ? <SeldomNeeded who={who} onChoose={onChoose} /> : null}
        <SeldomLinks />
      </Disclosure>
    </div>
  );
};
