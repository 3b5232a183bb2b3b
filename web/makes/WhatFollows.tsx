import { useMemo } from 'react';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { useSettled } from '../parts/useSettled.ts';
import { useMake } from './make-context.ts';
import { sayWhatFollows } from './what-follows.ts';

const words = webWords.make.alterations;

/** What the list does to the rest, once her hand rests. */
export const WhatFollows = () => {
  const say = useSay();
  const { altered } = useMake();
  const rested = useSettled(altered);
  const lines = useMemo(() => sayWhatFollows(rested.before, rested.garment, say), [rested, say]);
  if (lines.length === 0) return null;
  return (
    <section className="what-follows" aria-labelledby="what-follows">
      <h3 id="what-follows">{words.followsTitle}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
};
