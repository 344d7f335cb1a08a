/**
 * The document around every page. Reading the request's headers makes every page dynamic, so that
 * its scripts carry the nonce of the content policy; a prerendered page would be dead under it.
 */
import type { Metadata, Viewport } from 'next';
import { headers } from 'next/headers';
import type { ReactNode } from 'react';
import { postedAnswersHere } from '#server/http/forms/answers-here.ts';
import { PostedAnswers } from '#ui/design-system/posted/posted.tsx';
import { textSizeScript } from '#ui/language/text-size.ts';
import './globals.css';

export const metadata: Metadata = {
  title: { default: 'Loadgate', template: '%s · Loadgate' },
  description: 'Rehab loading guided by how the joint responds.',
  robots: { index: false, follow: false },
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  // The keyboard makes the page shorter and never lies over what stands at its foot.
  interactiveWidget: 'resizes-content',
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f5efe3' },
    { media: '(prefers-color-scheme: dark)', color: '#1a1714' },
  ],
};

/**
 * The nonce under which the document came, where the widget library looks for it to write its one style element.
 * A refresh of the page brings another nonce, by which the browser would refuse that element.
 */
const firstNonceScript = ';window.__webpack_nonce__=document.currentScript.nonce';

const RootLayout = async ({ children }: { readonly children: ReactNode }) => {
  const nonce = (await headers()).get('x-nonce') ?? undefined;
  return (
    // Its script below may have set the size of the text before React looks.
    <html lang="en" dir="ltr" suppressHydrationWarning>
      <head>
        <script nonce={nonce} suppressHydrationWarning>
          {textSizeScript + firstNonceScript}
        </script>
      </head>
      <body>
        <PostedAnswers answers={await postedAnswersHere()}>{children}</PostedAnswers>
      </body>
    </html>
  );
};

export default RootLayout;
