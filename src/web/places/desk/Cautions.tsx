/** What holds for every cook. */
import { Link } from 'wouter';
import { DangerMark } from '../../parts/DangerMark.tsx';

export function Cautions({ alkali }: { readonly alkali: boolean }) {
  return (
    <section aria-labelledby="cautions" className="cautions">
      <h2 id="cautions">
        <DangerMark /> Before the heat is on
      </h2>
      <ul className="rules">
        <li>
          <strong>Hot sugar sticks and burns deep.</strong> Cold running water within reach; long sleeves, closed shoes,
          eye protection; dry mitts, a lid and a cold wet towel at hand.
        </li>
        <li>
          <strong>Stay with the pan.</strong> Umberpan computes a plan; it never watches your stove. If you leave, turn
          the heat off.
        </li>
        <li>
          Water and alkali flash to steam: one spoonful at a time, down the side, face away, and wait till it is quiet.
        </li>
        <li>Children and pets at least 1 m away. Never touch or taste hot syrup: drops go on a cold plate.</li>
        {alkali && (
          <li>
            <strong>Lye burns and can blind.</strong> Goggles and nitrile gloves; never in an aluminium pan; the safety
            data sheet first.
          </li>
        )}
      </ul>
      <p className="screen">
        <Link href="/care">Burned, splashed, or a pan on fire: Care</Link>
      </p>
    </section>
  );
}
