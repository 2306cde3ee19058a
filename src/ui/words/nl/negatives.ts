// What is asked of how negatives look, what it was, and what to change.

export const negatives = {
  name: "Hoe zien de negatieven eruit?",
  hint: "Houd ze droog tegen een lamp, niet tegen de zon. Antwoord wat u ziet: wat het was en wat te veranderen staat eronder.",
  density: "Tegen het licht zijn ze",
  densities: {
    clear: "helder als glas",
    thin: "dun en vlak",
    good: "goed",
    dense: "dicht en donker",
  },
  edge: "De nummers aan de rand zijn",
  edges: {
    none: "er niet",
    faint: "zwak",
    usual: "zoals anders",
    heavy: "dik en zwart",
  },
  mark: "En er is",
  marks: {
    milky: "een melkachtige sluier",
    purple: "een paarse of blauwe zweem",
    drying: "kringen of strepen van gedroogde druppels",
    grey: "een gelijkmatig grijs, ook tussen de beelden",
    streaks: "strepen vanaf de perforatie",
    spots: "kleine ronde heldere vlekjes",
    moons: "halve maantjes, donker of helder",
    patches: "een plek die nooit ontwikkeld is",
  },
  unsaid: "niet gezegd",
  mend: "Dit is nu nog te verhelpen.",
  change: "Te veranderen:",
  causes: {
    well: {
      was: "Goed belicht en goed ontwikkeld.",
      change: "niets. Doe het weer zoals het hier staat.",
    },
    "not-exposed": {
      was: "De rand heeft zijn nummers, dus de ontwikkelaar werkte: op deze film is geen beeld gekomen.",
      change: "kijk of de film in de camera doordraait en of de sluiter opengaat.",
    },
    "not-developed": {
      was: "Zelfs de nummers kwamen niet: de ontwikkelaar was op of vergeten, of de fixeer kwam eerst.",
      change:
        "nummer de vaten in hun volgorde en probeer bij licht een druppel ontwikkelaar op een afgeknipt stukje film: het moet donker worden.",
    },
    "under-exposed": {
      was: "De nummers zijn krachtig, dus het lag niet aan het ontwikkelen: er kwam te weinig licht op de film. Langer ontwikkelen haalt schaduwen niet terug.",
      change: "meet met een lagere waarde.",
    },
    "under-developed": {
      was: "Ook de nummers zijn zwak: te weinig ontwikkeld. Te kort, te koud, te slap of op.",
      change:
        "lees de thermometer in de tank aan het begin en aan het eind, controleer de verdunning en doe een tiende tot een vijfde bij de tijd.",
    },
    "over-exposed": {
      was: "De nummers zijn zoals anders, dus het was de belichting: te veel licht.",
      change: "meet met een hogere waarde, of kijk objectief en lichtmeter na.",
    },
    "over-developed": {
      was: "Ook de nummers zijn dik: te veel ontwikkeld. Te lang, te warm, te sterk of te veel bewogen.",
      change:
        "controleer temperatuur en verdunning en haal een tiende tot een vijfde van de tijd af.",
    },
    "clear-either": {
      was: "Zonder de nummers is het niet te zeggen: niet belicht of niet ontwikkeld.",
      change: "kijk langs de rand. Met nummers was het de camera, zonder de ontwikkelaar.",
    },
    "thin-either": {
      was: "Zonder de nummers is het niet te zeggen: te weinig licht of te weinig ontwikkeld.",
      change:
        "kijk langs de rand. Zwakke nummers wijzen op het ontwikkelen, krachtige op het belichten.",
    },
    "dense-either": {
      was: "Zonder de nummers is het niet te zeggen: te veel licht of te veel ontwikkeld.",
      change:
        "kijk langs de rand van deze film of van de volgende. Dikke nummers wijzen op het ontwikkelen.",
    },
    milky: {
      was: "Hij is niet uitgefixeerd.",
      change:
        "bij licht terug in verse fixeer voor twee keer de klaringstijd, en opnieuw spoelen. Test de fixeer voor de volgende film.",
    },
    purple: {
      was: "Er is kleurstof in gebleven; bij sommige films is een beetje gewoon.",
      change: "fixeer wat langer in verse fixeer en spoel langer, niet te koud.",
    },
    drying: {
      was: "Druppels zijn gedroogd waar ze hingen.",
      change:
        "spoel opnieuw en geef een bevochtiger in zacht of gedestilleerd water. Hang hem stofvrij op.",
    },
    grey: {
      was: "Er kwam buiten de camera licht bij, of oude chemie heeft hem gesluierd.",
      change:
        "wacht langer in het donker en zoek naar lekken, voel naar de kern en het slot van het deksel, en neem verse ontwikkelaar.",
    },
    streaks: {
      was: "Te hard bewogen, of steeds op dezelfde manier.",
      change: "kantel zachter, met een kwartslag ertussen.",
    },
    spots: {
      was: "Er hingen luchtbellen aan.",
      change: "tik de tank na elke beweging stevig op en giet gestaag.",
    },
    moons: {
      was: "Hij is bij het inspoelen geknikt.",
      change: "laad zonder kracht, op een droge spiraal; zit hij vast, een slag terug.",
    },
    patches: {
      was: "Twee slagen raakten elkaar op de spiraal, en er kwam niets tussen.",
      change: "voel bij het laden beide randen van elke slag; oefen bij licht met een oude film.",
    },
  },
};
