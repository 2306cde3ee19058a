// The words, in Italian, of "Who speaks" and of the sheet on which a voice is recorded.
import type { LateWords } from "../words.ts";

export const speaker: LateWords["speaker"] = {
  who: "Chi parla su questo dispositivo",
  bundled: "La voce inclusa in Tankside",
  own: (recorded: number, of: number) => `La mia voce (frasi registrate: ${recorded} su ${of})`,
  ownHint:
    "Una frase la dice la tua voce solo quando è registrata per intero; fino ad allora la dice la voce inclusa in Tankside.",
  packName: "La mia voce",
  record: "Registra la tua voce",
  goOn: "Continua a registrare",
  export: "Salva la tua voce in un file",
  import: "Apri una voce da un file",
  removeAll: "Elimina tutte le registrazioni",
  undo: "Annulla",
  choiceNotKept: "Questo browser non conserva la scelta: vale finché non chiudi la pagina.",
  opening: "Si caricano le frasi…",
  notOpened: "Le frasi non si sono potute caricare. La rete serve una volta sola, la prima.",
  saved: (name: string) => `Voce salvata come ${name}.`,
  nothingToSave: "Non c’è ancora niente di registrato.",
  imported: (clips: number, unknown: readonly string[]) =>
    clips === 1
      ? `È stata aggiunta 1 frase. ${leftOut(unknown)}Annulla riporta tutto com’era.`
      : `Sono state aggiunte ${clips} frasi. ${leftOut(unknown)}Annulla riporta tutto com’era.`,
  removedAll: "Tutte le registrazioni sono eliminate. Annulla le riporta.",
  undone: "Annullato.",
  notKept:
    "Questo browser non conserva la modifica: si perde quando chiudi la pagina. Prima salva la tua voce in un file.",
  notRead: "Le registrazioni di prima non si sono potute leggere da questo browser.",
};

function leftOut(unknown: readonly string[]): string {
  if (unknown.length === 0) return "";
  const named = unknown
    .slice(0, 3)
    .map((text) => `«${text}»`)
    .join(", ");
  return unknown.length <= 3
    ? `Escluso, perché qui non si dice mai: ${named}. `
    : `${unknown.length} frasi escluse, perché qui non si dicono mai: ${named} e altre. `;
}

export const deviceVoice: LateWords["deviceVoice"] = {
  device: "Una voce di questo dispositivo",
  hint: "Parla con il suo ritmo, e solo finché questa pagina è in vista. Se non funziona per due volte di fila, subentra la voce inclusa in Tankside. I suoni non dipendono mai da lei.",
  which: "Quale",
  measure: "Ascolta e misura",
  measuring: "Dice qualche frase, per la misura…",
  first: "Prima che possa guidare uno sviluppo bisogna ascoltarla e misurarla.",
  runOn: "È in corso uno sviluppo. Per misurare bisogna aspettare che finisca.",
  measured: (delay: string, letters: number) =>
    `Comincia dopo ${delay}, dice ${letters} lettere al secondo.`,
  refused: {
    "never-starts":
      "Questa voce non ha cominciato a parlare entro 3 secondi, perciò non può guidare uno sviluppo.",
    "never-ends":
      "Questa voce non segnala quando ha finito, perciò non può guidare uno sviluppo: potrebbe coprire un momento decisivo.",
    failed: "Questa voce non è riuscita a parlare.",
    "too-slow":
      "Questa voce impiega più di 10 secondi per una frase, perciò non può guidare uno sviluppo.",
  },
};

export const recording: LateWords["recording"] = {
  name: "Registra la tua voce",
  progress: (recorded: number, of: number) => `${recorded} su ${of}`,
  recorded: "registrate",
  forWorksheet: (recorded: number, of: number) =>
    recorded === of
      ? "Tutto quello che dice la scheda nella pagina è registrato."
      : `Di quello che dice la scheda nella pagina: ${recorded} su ${of}.`,
  say: "Di’",
  isRecorded: "Questa frase è registrata.",
  level: "Livello",
  levels: { none: "nessun suono", soft: "basso", good: "buono", loud: "molto alto" },
  record: "Registra",
  stop: "Ferma",
  keep: "Tieni e vai avanti",
  again: "Registra di nuovo",
  hear: "Ascolta",
  sayIt: "Leggimela",
  back: "Indietro",
  skip: "Avanti",
  remove: "Elimina questa",
  undo: "Annulla",
  leave: "Esci",
  keys: {
    press: "Spazio",
    keep: "Invio",
    hear: "H",
    say: "R",
    back: "←",
    skip: "→",
    remove: "Canc",
    undo: "U",
    leave: "Esc",
  },
  opening: "Si chiede l’accesso al microfono…",
  ready:
    "Parla come a qualcuno che ti sta accanto, a un palmo dal microfono. Se usi un lettore di schermo, mettiti gli auricolari: altrimenti si registra anche lui.",
  recording: "Sta registrando. Di’ la frase, poi ferma.",
  taken: (seconds: string) => `Registrata: ${seconds}. Ascoltala, tienila o registra di nuovo.`,
  told: {
    kept: "Conservata.",
    "not-kept":
      "Questo browser non conserva la registrazione: si perde quando chiudi la pagina. Prima salva la tua voce in un file.",
    removed: "Eliminata. Annulla la riporta.",
    undone: "Annullato.",
    "run-on": "È in corso uno sviluppo. Per registrare bisogna aspettare che finisca.",
    "no-sound": "Non si è potuto avviare nessun suono.",
  },
};

/** Why there is nothing to keep of what was recorded. */
export const unusable: LateWords["unusable"] = {
  "too-quiet":
    "Si sente troppo poco per servire. Avvicinati al microfono, o alzane il livello, e registra di nuovo.",
  clipped:
    "Troppo forte per il microfono: distorce. Allontanati un po’, o abbassane il livello, e registra di nuovo.",
  noise:
    "Le parole non si distinguono dal rumore della stanza. Avvicinati, o cerca un posto più tranquillo, e registra di nuovo.",
  "too-short":
    "Troppo breve per essere la frase. Premi, parla, e premi di nuovo quando hai finito.",
  "too-long": (lasts: string, most: string) =>
    `Dura ${lasts}, e c’è posto solo per ${most}. Registra di nuovo, un po’ più in fretta.`,
};

export const microphone: LateWords["microphone"] = {
  denied:
    "Qui non è permesso usare il microfono. Consentilo per questa pagina nelle impostazioni del browser, poi premi di nuovo.",
  none: "Non è stato trovato nessun microfono. Collegane uno, poi premi di nuovo.",
  busy: "Il microfono non è disponibile: forse lo sta usando un altro programma. Chiudilo, poi premi di nuovo.",
  unable: "Questo browser non può registrare in questa pagina.",
};

/** Why a voice's file was refused; `name` is the file's own. */
export const noPack: LateWords["noPack"] = {
  foreign: (name: string) => `${name} non è una voce salvata da Tankside. Non è cambiato niente.`,
  "other-version": (name: string) =>
    `${name} viene da una versione più recente di Tankside, che questa non sa leggere. Non è cambiato niente.`,
  damaged: (name: string) =>
    `${name} è danneggiato: qualcosa manca o è alterato. Non è cambiato niente.`,
  "too-large": (name: string) =>
    `${name} contiene più di quanto una voce possa avere. Non è cambiato niente.`,
  "other-language": (name: string, language: string) =>
    `${name} parla un’altra lingua (${language}). Non è cambiato niente.`,
  "other-sound": (name: string, file: string) =>
    `${file} in ${name} non è un semplice WAV a 24 kHz, 16 bit, un canale. Non è cambiato niente.`,
};
