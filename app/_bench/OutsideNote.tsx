import { StateNote } from "../_components/StateNote";

/** Said before anything else when what came in is none of this trade's instruments. */
export function OutsideNote({ label }: Readonly<{ label: string }>) {
  return (
    <StateNote level={2} title={`${label}: outside the field of this casebook`} tone="warn">
      <p>
        It covers brass and woodwind. Nothing here is to be leaned on for anything else; send it to somebody
        who knows it.
      </p>
    </StateNote>
  );
}
