// Pictures of a run's negatives: added from a camera or from files, each with what its owner says is in it.
import { useEffect, useId, useRef, useState } from "preact/hooks";
import type { Picture } from "../logbook/picture.ts";
import type { PictureStore } from "../logbook/picture-store.ts";
import { lateWords } from "./language.ts";
import type { ScalePicture } from "./scale-picture.ts";
import type { WriteUp } from "./write-up-state.ts";

export interface PicturePorts {
  readonly pictures: PictureStore;
  readonly scale: ScalePicture;
  /** ms since 1970. */
  readonly now: () => number;
}

interface PicturesProps {
  readonly run: string;
  readonly ports: PicturePorts;
  readonly writeUp: WriteUp;
}

export function Pictures({ run, ports, writeUp }: PicturesProps) {
  const [all, setAll] = useState<readonly Picture[]>([]);
  /** As described last: a press may come before that is drawn, and before the field is left. */
  const latest = useRef(new Map<string, Picture>());
  const writing = useRef<Promise<void>>(Promise.resolve());
  const id = useId();
  const looks = writeUp.pictured.value;
  const said = lateWords.value.pictures;
  // Looked at again when one went or came back.
  useEffect(() => {
    let shown = true;
    void ports.pictures.of(run).then((found) => {
      if (!shown) return;
      latest.current.clear();
      setAll(found);
    });
    return () => {
      shown = false;
    };
  }, [ports, run, looks]);

  async function add(files: readonly File[]): Promise<void> {
    for (const file of files) {
      const scaled = await ports.scale(file);
      if (scaled === null) {
        writeUp.tell(() => lateWords.value.pictures.notPicture(file.name));
        continue;
      }
      const at = ports.now();
      const id = crypto.randomUUID();
      const picture: Picture = { id, run, alt: "", addedAt: at, changedAt: at, ...scaled };
      const written = await ports.pictures.keep(picture);
      if (written === "kept") setAll((others) => [...others, picture]);
      else writeUp.tell(() => refusal(written));
    }
  }

  /** Stands here at once, so that whatever is done with the picture next is done with its description. */
  function describe(picture: Picture, alt: string): void {
    const described = { ...picture, alt, changedAt: ports.now() };
    latest.current.set(picture.id, described);
    setAll((others) => others.map((it) => (it.id === picture.id ? described : it)));
    writing.current = ports.pictures.keep(described).then((written) => {
      if (written !== "kept") writeUp.tell(() => refusal(written));
    });
  }

  async function takeOut(picture: Picture): Promise<void> {
    // A description that is kept behind its picture's back would bring it back.
    await writing.current;
    await writeUp.takeOutPicture(latest.current.get(picture.id) ?? picture);
  }

  return (
    <details class="pictures">
      <summary>{said.name(all.length)}</summary>
      <p class="hint">{said.hint}</p>
      <ul>
        {all.map((picture) => (
          <li key={picture.id}>
            <Shown picture={picture} />
            <label for={`alt-${picture.id}`}>{said.alt}</label>
            <input
              id={`alt-${picture.id}`}
              value={picture.alt}
              onInput={(event) =>
                latest.current.set(picture.id, { ...picture, alt: event.currentTarget.value })
              }
              onChange={(event) => describe(picture, event.currentTarget.value)}
            />
            <button type="button" class="plain" onClick={() => void takeOut(picture)}>
              {said.remove}
              <span class="unseen"> {picture.alt}</span>
            </button>
          </li>
        ))}
      </ul>
      <label for={id}>{said.add}</label>
      <input
        id={id}
        type="file"
        accept="image/*"
        multiple
        onChange={(event) => {
          const input = event.currentTarget;
          void add([...(input.files ?? [])]).then(() => {
            input.value = "";
          });
        }}
      />
    </details>
  );
}

const refusal = (written: "no room" | "refused"): string =>
  written === "no room" ? lateWords.value.pictures.noRoom : lateWords.value.pictures.notKept;

function Shown({ picture }: { readonly picture: Picture }) {
  const { image, alt, width, height } = picture;
  const [url, setUrl] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(image);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [image]);
  if (url === null) return null;
  const said = alt === "" ? lateWords.value.pictures.unnamed : alt;
  return <img src={url} alt={said} width={width} height={height} />;
}
