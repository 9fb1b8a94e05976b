/** The optional voice; never the only way something is told. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { createVoice, hasVoices, type Rank, type Voice } from './voice.ts';

export type VoiceState = 'off' | 'on' | 'not available';

export function useVoice(wanted: boolean) {
  const [state, setState] = useState<VoiceState>('off');
  const voice = useRef<Voice>(undefined);

  useEffect(() => {
    if (!wanted) return;
    let stopped = false;
    const fail = () => setState('not available');
    const open = async () => {
      if (!('speechSynthesis' in window) || !(await hasVoices(speechSynthesis))) return stopped || fail();
      if (stopped) return;
      voice.current = createVoice(speechSynthesis, english, fail);
      setState('on');
    };
    void open();
    return () => {
      stopped = true;
      voice.current?.stop();
      voice.current = undefined;
      setState('off');
    };
  }, [wanted]);

  const say = useCallback((words: string, rank: Rank) => voice.current?.say(words, rank), []);
  const hush = useCallback(() => voice.current?.stop(), []);
  return { state, say, hush };
}

function english(words: string): SpeechSynthesisUtterance {
  const utterance = new SpeechSynthesisUtterance(words);
  utterance.lang = 'en';
  return utterance;
}
