import { expect, it } from 'vitest';
import { blockReader } from './eventStream.ts';

const stream =
  'retry: 500\n\nevent: beat\ndata: {"lastSeq":1}\n\nevent: logged\nid: 2\ndata: {"text":"a\\nb"}\n\nevent: other\ndata: 1\n\n';

it('tells each event once and whole, however the text is cut', () => {
  for (let size = 1; size <= stream.length; size++) {
    const heard: unknown[] = [];
    const tell = blockReader({ beat: (data) => heard.push(data), logged: (data) => heard.push(data) });
    for (let at = 0; at < stream.length; at += size) tell(stream.slice(at, at + size));
    expect(heard).toEqual([{ lastSeq: 1 }, { text: 'a\nb' }]);
  }
});
