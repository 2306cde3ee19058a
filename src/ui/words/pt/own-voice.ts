// The words of "Who speaks" and of the sheet on which a voice is recorded, in Portuguese. "Frase" stands
// for what is recorded in one go, and for the whole sentence too.
import type { LateWords } from "../words.ts";

export const speaker: LateWords["speaker"] = {
  who: "Quem fala neste aparelho",
  bundled: "A voz que vem com o Tankside",
  own: (recorded, of) => `A minha própria voz (${recorded} de ${of} frases gravadas)`,
  ownHint:
    "Uma frase ouve-se na sua voz quando está toda gravada; até lá, quem a diz é a voz que vem com o Tankside.",
  packName: "A minha própria voz",
  record: "Gravar a sua voz",
  goOn: "Continuar a gravar a sua voz",
  export: "Guardar a sua voz num ficheiro",
  import: "Abrir uma voz de um ficheiro",
  removeAll: "Apagar todas as gravações",
  undo: "Anular",
  choiceNotKept: "Este navegador não guarda a escolha: vale até a página ser fechada.",
  opening: "A ir buscar o guião…",
  notOpened: "Não se conseguiu ir buscar o guião. É preciso rede uma vez, a primeira.",
  saved: (name) => `Guardado como ${name}.`,
  nothingToSave: "Ainda não há nada gravado.",
  imported: (clips, unknown) =>
    clips === 1
      ? `Entrou 1 frase. ${leftOut(unknown)}«Anular» volta a tirá-la.`
      : `Entraram ${clips} frases. ${leftOut(unknown)}«Anular» volta a tirá-las.`,
  removedAll: "Todas as gravações foram apagadas. «Anular» trá-las de volta.",
  undone: "Anulado.",
  notKept:
    "Este navegador não guarda isto: dura até a página ser fechada. Antes disso, guarde a sua voz num ficheiro.",
  notRead: "Não se conseguiu ler neste navegador o que gravou das outras vezes.",
};

function leftOut(unknown: readonly string[]): string {
  if (unknown.length === 0) return "";
  const named = unknown
    .slice(0, 3)
    .map((text) => `«${text}»`)
    .join(", ");
  if (unknown.length === 1) return `Ficou de fora, porque aqui nunca se diz: ${named}. `;
  return unknown.length <= 3
    ? `Ficaram de fora, porque aqui nunca se dizem: ${named}. `
    : `Ficaram de fora ${unknown.length}, porque aqui nunca se dizem: ${named} e outras. `;
}

export const deviceVoice: LateWords["deviceVoice"] = {
  device: "Uma voz deste aparelho",
  hint: "Fala ao seu próprio ritmo, e só enquanto esta página está à vista. Se falhar duas vezes seguidas, passa a falar a voz que vem com o Tankside. Os sinais nunca dependem dela.",
  which: "Que voz",
  measure: "Ouvir e medir",
  measuring: "A dizer algumas frases, para se medir…",
  first: "Para poder guiar uma sessão, tem primeiro de ser ouvida e medida.",
  runOn: "Há uma sessão a decorrer. Para medir, espere que acabe.",
  measured: (delay, letters) => `Demora ${delay} a começar e diz ${letters} letras por segundo.`,
  refused: {
    "never-starts":
      "Esta voz não começou a falar em 3 segundos, e por isso não pode guiar uma sessão.",
    "never-ends":
      "Esta voz não dá sinal de que acabou, e por isso não pode guiar uma sessão: poderia ainda estar a falar no momento de agir.",
    failed: "Esta voz não conseguiu falar.",
    "too-slow":
      "Esta voz demora mais de 10 segundos a dizer uma frase, e por isso não pode guiar uma sessão.",
  },
};

export const recording: LateWords["recording"] = {
  name: "Gravar a sua voz",
  progress: (recorded, of) => `${recorded} de ${of}`,
  recorded: "frases gravadas",
  forWorksheet: (recorded, of) =>
    recorded === of
      ? "Está gravado tudo o que diz a folha desta página."
      : `Do que diz a folha desta página: ${recorded} de ${of}.`,
  say: "Diga",
  isRecorded: "Esta frase está gravada.",
  level: "Nível",
  levels: { none: "não se ouve nada", soft: "fraco", good: "bom", loud: "muito forte" },
  record: "Gravar",
  stop: "Parar",
  keep: "Guardar e seguir",
  again: "Gravar de novo",
  hear: "Ouvir a gravação",
  sayIt: "Ouvir ler a frase",
  back: "Anterior",
  skip: "Seguinte",
  remove: "Apagar esta",
  undo: "Anular",
  leave: "Sair",
  keys: {
    press: "Espaço",
    keep: "Enter",
    hear: "H",
    say: "R",
    back: "←",
    skip: "→",
    remove: "Delete",
    undo: "U",
    leave: "Esc",
  },
  opening: "A pedir o microfone…",
  ready:
    "Fale como falaria a alguém ao seu lado, a quatro dedos do microfone. Se usa um leitor de ecrã, ponha auscultadores: senão, também ele ficaria gravado.",
  recording: "A gravar. Diga a frase e depois pare.",
  taken: (seconds) => `Gravada: ${seconds}. Ouça, guarde ou grave de novo.`,
  told: {
    kept: "Guardada.",
    "not-kept":
      "Este navegador não a guarda: fica aqui até a página ser fechada. Antes disso, guarde a sua voz num ficheiro.",
    removed: "Apagada. «Anular» trá-la de volta.",
    undone: "Anulado.",
    "run-on": "Há uma sessão a decorrer. Para gravar, espere que acabe.",
    "no-sound": "Não se conseguiu pôr o som a tocar.",
  },
};

/** Why there is nothing to keep of what was recorded. */
export const unusable: LateWords["unusable"] = {
  "too-quiet":
    "Ouve-se demasiado baixo para servir. Chegue-se ao microfone ou aumente-lhe o nível, e grave de novo.",
  clipped:
    "Demasiado forte para o microfone: satura. Afaste-se um pouco ou baixe-lhe o nível, e grave de novo.",
  noise:
    "As palavras não se distinguem do ruído da sala. Chegue-se mais perto ou procure um sítio mais sossegado, e grave de novo.",
  "too-short":
    "Demasiado curto para ser a frase. Pressione, fale e volte a pressionar quando acabar.",
  "too-long": (lasts, most) =>
    `Dura ${lasts} e só há lugar para ${most}. Diga-a mais depressa e grave de novo.`,
};

export const microphone: LateWords["microphone"] = {
  denied:
    "Aqui não é permitido usar o microfone. Permita-o para esta página nas definições do navegador e volte a pressionar.",
  none: "Não se encontrou nenhum microfone. Ligue um e volte a pressionar.",
  busy: "Não se conseguiu usar o microfone: talvez outro programa o tenha ocupado. Feche esse programa e volte a pressionar.",
  unable: "Este navegador não consegue gravar nesta página.",
};

/** Why a voice's file was refused; `name` is the file's own. */
export const noPack: LateWords["noPack"] = {
  foreign: (name) => `${name} não é uma voz guardada pelo Tankside. Aqui não mudou nada.`,
  "other-version": (name) =>
    `${name} foi guardado por um Tankside mais recente, e este não o sabe ler. Aqui não mudou nada.`,
  damaged: (name) =>
    `${name} está danificado: falta-lhe algo ou foi alterado. Aqui não mudou nada.`,
  "too-large": (name) => `${name} traz mais do que cabe numa voz. Aqui não mudou nada.`,
  "other-language": (name, language) =>
    `${name} fala outra língua (${language}). Aqui não mudou nada.`,
  "other-sound": (name, file) =>
    `${file}, dentro de ${name}, não é um WAV sem compressão de 24 kHz, 16 bits e um canal. Aqui não mudou nada.`,
};
