/** The one thing to do next. New advice is told to those who hear the page; the card keeps its size and place. */
import { useEffect, useRef, useState } from 'react';
import { useActs } from './acts.ts';
import type { Card } from './card.ts';
import { useGuard } from './useGuard.ts';

const words = { 'act now': 'Act now', 'act soon': 'Act soon', next: 'Next', 'go on': 'Go on' } as const;

export function AdviceCard({ card, aside }: { readonly card: Card; readonly aside: boolean }) {
  const acts = useActs();
  const guarded = useGuard(card.key);
  const [noted, note] = useNoted(card.key);
  const asks = card.deeds.length > 0 && !aside;
  return (
    <section
      className="card"
      data-urgency={asks || card.urgency === 'act now' ? card.urgency : 'go on'}
      aria-label="Advice"
    >
      <p className="urgency">
        <UrgencyMark urgency={card.urgency} />
        {aside ? 'Put aside for a minute' : words[card.urgency]}
      </p>
      <h2 id="advised">{card.title}</h2>
      <p className="effect">
        {card.effect} <span className="likely-span small quiet">{card.likely}</span>
      </p>
      <div className="card-buttons">
        {asks && !acts.looksOn ? (
          <>
            <button
              type="button"
              className="main done"
              aria-describedby="advised"
              disabled={noted}
              onClick={guarded(() => {
                note();
                acts.perform(card.deeds);
              })}
            >
              {noted ? 'Noted' : 'Done'}
            </button>
            {card.canWait && (
              <button type="button" className="not-now" onClick={guarded(acts.putAside)}>
                Not now
              </button>
            )}
          </>
        ) : (
          <p className="quiet nothing">{nothingWords(aside, asks)}</p>
        )}
      </div>
      <p className="reason">{card.reason}</p>
      <p className="caution">{card.caution}</p>
      <Announcement card={card} asks={asks} />
    </section>
  );
}

function nothingWords(aside: boolean, asks: boolean): string {
  if (asks) return 'Whoever is at the stove is told this too.';
  return aside ? 'It comes back if it still holds.' : 'No act needed now.';
}

/** How long a tap stands for the card that it was on, unless that changes first, ms. */
const notedMs = 3000;

/** Once tapped the button rests until the card is another, so that one act is never noted twice. */
function useNoted(key: string): readonly [boolean, () => void] {
  const [tapped, setTapped] = useState<string>();
  useEffect(() => {
    if (tapped === undefined) return;
    const timer = setTimeout(() => setTapped(undefined), notedMs);
    return () => clearTimeout(timer);
  }, [tapped]);
  return [tapped === key, () => setTapped(key)];
}

const marks = {
  'act now': 'M12 3 22 21H2z',
  'act soon': 'M12 3 22 21H2z',
  next: 'M8 4l9 8-9 8',
  'go on': 'M3 12h18',
} as const;

/** Shape as well as word: a filled triangle, an open one, a tip, a dash. */
function UrgencyMark({ urgency }: { readonly urgency: Card['urgency'] }) {
  return (
    <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
      <path
        d={marks[urgency]}
        fill={urgency === 'act now' ? 'currentColor' : 'none'}
        stroke="currentColor"
        strokeWidth="2.5"
        strokeLinejoin="round"
      />
    </svg>
  );
}

/** Says advice when it is new and asks for something; readings are never said. */
function Announcement({ card, asks }: { readonly card: Card; readonly asks: boolean }) {
  const [said, setSaid] = useState('');
  const last = useRef('');
  useEffect(() => {
    const key = asks ? card.key : '';
    if (key === last.current) return;
    last.current = key;
    setSaid(asks ? `${words[card.urgency]}: ${card.title}. ${card.reason}` : '');
  }, [card, asks]);
  return (
    <p className="unseen" role="status" aria-live={card.urgency === 'act now' ? 'assertive' : 'polite'}>
      {said}
    </p>
  );
}
