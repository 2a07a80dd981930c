# Writes reading-level.readsight-ruts-alt.json: what three programs count and find in a text in French, Portuguese and
# Russian: readsight 1.0.5, ruTS 0.19.0 and alt-legibilidade 0.1.2 (by the authors of the Portuguese grade), from PyPI. The
# texts are our own. Run it by hand, from this folder:
# python3 reading-level.readsight-ruts-alt.py > reading-level.readsight-ruts-alt.json, then npm run format

import json

from alt_legibilidade.frases import contar_frases
from alt_legibilidade.palavras import contar_palavras
from alt_legibilidade.silabas import contar_silabas
from readsight import ReadSight
from ruts import ReadabilityStats

TEXTS = {
    "fr": "Le chirurgien retire une grande partie de votre estomac. Vous mangez moins et vous avez faim plus tard. "
    "La plupart des personnes rentrent à la maison après deux jours. Appelez tout de suite si vous avez de la fièvre "
    "ou une forte douleur au ventre. Prenez vos vitamines chaque matin avec un verre d'eau.",
    "pt": "O cirurgião retira uma grande parte do seu estômago. Você come menos e sente fome mais tarde. A maior parte das "
    "pessoas volta para casa depois de dois dias. Ligue na hora se tiver febre ou muita dor na barriga. Tome as suas "
    "vitaminas toda manhã com um copo de água.",
    "ru": "Хирург удаляет большую часть вашего желудка. Вы едите меньше и позже чувствуете голод. Большинство людей "
    "возвращается домой через два дня. Сразу звоните, если у вас жар или сильная боль в животе. Принимайте витамины "
    "каждое утро и запивайте их водой.",
}


def by_readsight(tag: str, code: str) -> list[dict]:
    reader = ReadSight(tag)
    stats = reader.analyze(TEXTS[tag])
    counts = {
        "words": stats.word_count,
        "sentences": stats.sentence_count,
        "syllables": stats.syllable_count,
        "wideWords": sum(len(word.strip(".,")) > 6 for word in TEXTS[tag].split()),
    }
    return [
        {"by": "readsight", "language": tag, "formula": formula, **counts, "score": result.score}
        for formula, result in [(code, reader.flesch_reading_ease(TEXTS[tag])), ("lix", reader.lix(TEXTS[tag]))]
    ]


def by_alt() -> list[dict]:
    text = TEXTS["pt"]
    words, sentences, syllables = contar_palavras(text), contar_frases(text), contar_silabas(text)
    # As its command line has it, where the formula stands between its files.
    grade = 0.36 * words / sentences + 10.4 * syllables / words - 18
    counts = {"words": words, "sentences": sentences, "syllables": syllables}
    return [{"by": "alt-legibilidade", "language": "pt", "formula": "moreno", **counts, "score": grade}]


# readsight has the second of two sets of coefficients that are in use under the name of Oborneva, ruTS both: the first is
# its `fiction`; `academic` is the school class of 2018.
def by_ruts() -> list[dict]:
    stats = ReadabilityStats(TEXTS["ru"], preset="academic")
    counts = {
        "words": stats.bs.n_words,
        "sentences": stats.bs.n_sents,
        "syllables": stats.bs.n_syllables,
        "wideWords": sum(count for length, count in stats.bs.c_letters.items() if length > 6),
    }
    ease = ReadabilityStats(TEXTS["ru"], preset="fiction").flesch_reading_easy
    found = [("oborneva", ease), ("solovyev", stats.flesch_kincaid_grade), ("lix", stats.lix)]
    return [{"by": "ruTS", "language": "ru", "formula": formula, **counts, "score": score} for formula, score in found]


readings = [
    *by_readsight("fr", "kandel-moles"),
    *by_readsight("pt", "martins"),
    *by_alt(),
    *by_ruts(),
]
print(json.dumps({"texts": TEXTS, "readings": readings}, ensure_ascii=False, indent=2))
