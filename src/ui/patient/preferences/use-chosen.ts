'use client';
/** Whether something that is off until it is wanted was chosen; off on the server, which reads no choice of it. */
import { useEffect, useState } from 'react';
import { chosenEvent, isChosen, type OnOrOffName } from './chosen.ts';

export const useChosen = (name: OnOrOffName): boolean => {
  const [isOn, setOn] = useState(false);
  useEffect(() => {
    const look = () => setOn(isChosen(name));
    look();
    window.addEventListener(chosenEvent, look);
    return () => window.removeEventListener(chosenEvent, look);
  }, [name]);
  return isOn;
};
