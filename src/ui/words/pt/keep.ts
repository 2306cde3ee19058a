// The words of what the page says about itself: a newer version, standing among the programs, what is kept.

export const news = {
  ready: "Há uma versão nova pronta. A página é carregada de novo; o que escreveu fica.",
  takenElsewhere:
    "Outro separador já usa uma versão nova. Podem faltar partes a esta página até ser carregada de novo.",
  takeIt: "Usá-la já",
  loadAnew: "Carregar de novo",
  /** Said of the version, where something is in the way of it. */
  waits: {
    "run-is-on": "Espera que a sessão acabe.",
    "other-pages":
      "Feche primeiro os outros separadores e janelas de Tankside: ainda usam a versão anterior.",
    failed:
      "Agora não foi possível. Chega por si quando todos os separadores de Tankside tiverem sido fechados.",
  },
};

export const install = {
  offer: "Tankside pode ficar entre os programas deste aparelho.",
  install: "Instalar",
};

export const keeping = {
  /** Before a run, this and the next. */
  nothing:
    "Este navegador não guarda nada de uma sessão: se a página se fechar, não volta a encontrar o ponto em que estava, e não fica registo. É assim nas janelas privadas e com algumas definições.",
  noRoom:
    "Já não há espaço para guardar uma sessão: se a página se fechar, não volta a encontrar o ponto em que estava, e não fica registo. Arranje primeiro espaço neste aparelho.",
  /** Beside the records. */
  noMoreRoom:
    "Aqui já não há espaço para o registo de outra sessão. Arranje espaço neste aparelho, ou guarde as sessões num ficheiro e retire algumas.",
  mayBeCleared:
    "Este navegador pode apagar o que guarda aqui: uma janela privada, ao fechar; as outras, quando o disco enche. Guarde num ficheiro as sessões que importam.",
};
