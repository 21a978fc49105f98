package worthsaving.vehicle;

/** Legal standing of the papers as far as it is known. Unknown is not clean. */
public enum TitleBrand { CLEAN, CLEAN_CLAIMED, REBUILT, SALVAGE, FLOOD, LIEN, LOST, PARTS_ONLY, UNKNOWN }
