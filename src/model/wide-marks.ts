/** Words, with or without markup after them, that end in a mark of Chinese: it brings its own white, no space follows. */
export const endsWide = /[。！？：；，、）](?:<[^>]*>)*$/u;
