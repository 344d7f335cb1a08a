/** Lifts what stands at the foot of the window over a keyboard that is laid on top of the page. */
import { useEffect, useRef } from 'react';

export const useAboveKeyboard = () => {
  const bar = useRef<HTMLElement>(null);
  useEffect(() => {
    const seen = window.visualViewport;
    const lift = () => {
      // What stays in sight on the page stands above it.
      bar.current?.parentElement?.style.setProperty('--bar', `${bar.current.offsetHeight}px`);
      // A page that was pinched larger is looked at in parts; there the foot stays where it is.
      if (!seen || !bar.current || seen.scale > 1) return;
      const hidden = window.innerHeight - seen.height - seen.offsetTop;
      bar.current.style.insetBlockEnd = `${Math.max(0, hidden)}px`;
    };
    lift();
    seen?.addEventListener('resize', lift);
    seen?.addEventListener('scroll', lift);
    return () => {
      seen?.removeEventListener('resize', lift);
      seen?.removeEventListener('scroll', lift);
    };
  }, []);
  return bar;
};
