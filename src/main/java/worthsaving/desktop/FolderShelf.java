package worthsaving.desktop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.CatalogueText;
import worthsaving.desktop.catalogue.Shelf;

/** A folder with the catalogue's files. The version before the last change stays beside each as NAME.before. */
final class FolderShelf implements Shelf {

    private final Path folder;

    FolderShelf(Path folder) {
        this.folder = folder;
    }

    @Override
    public CatalogueText read() throws IOException {
        Map<String, String> files = new HashMap<>();
        for (String file : CatalogueReader.FILES) {
            files.put(file, Files.readString(folder.resolve(file), StandardCharsets.UTF_8));
        }
        return new CatalogueText(files);
    }

    /** All new files are written beside the old ones before the first is replaced. */
    @Override
    public void keep(CatalogueText text) throws IOException {
        CatalogueText before = read();
        Map<Path, Path> written = new LinkedHashMap<>();
        try {
            for (String file : CatalogueReader.FILES) {
                if (!text.files().get(file).equals(before.files().get(file))) {
                    Path draft = folder.resolve(file + ".draft");
                    written.put(draft, folder.resolve(file));
                    Files.writeString(draft, text.files().get(file), StandardCharsets.UTF_8);
                }
            }
            for (Map.Entry<Path, Path> file : written.entrySet()) {
                Path old = file.getValue().resolveSibling(file.getValue().getFileName() + ".before");
                Files.copy(file.getValue(), old, StandardCopyOption.REPLACE_EXISTING);
                Files.move(file.getKey(), file.getValue(), StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            for (Path draft : written.keySet()) {
                Files.deleteIfExists(draft);
            }
        }
    }

    @Override
    public String place() {
        return folder.toString();
    }
}
