'use client';
/**
 * The nonce under which the document came. A refresh of the page brings another one, by which the browser would
 * refuse what the widget library writes later.
 */
import { useState } from 'react';

export const FirstNonce = ({ nonce }: { readonly nonce: string }) => {
  const [first] = useState(nonce);
  return <meta property="csp-nonce" nonce={first} />;
};
